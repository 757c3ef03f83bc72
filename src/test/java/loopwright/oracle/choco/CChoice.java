package loopwright.oracle.choco;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.basis.Span;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Standards;
import loopwright.oracle.OracleCase;
import loopwright.oracle.choco.CBox.Ends;
import loopwright.quantity.Dimension;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/** Variables and bodies of parts and places. */
final class CChoice {
    /** The place of a part that is not there. */
    private static final int NOWHERE = -1;

    final List<CBody> bodies = new ArrayList<>();
    final List<IntVar> decisions = new ArrayList<>();
    private final CLogic logic;
    private final Catalog catalog;
    private final Brief brief;
    private final Inside inside;
    private final List<Mod> mods;
    private final List<BoolVar> done;
    private final List<IntVar> placeVars = new ArrayList<>();

    CChoice(CLogic logic, OracleCase question, List<BoolVar> done) {
        this.logic = logic;
        this.catalog = question.catalog();
        this.brief = question.brief();
        this.inside = question.chassis().inside();
        this.mods = question.chassis().mods();
        this.done = done;
    }

    void post() {
        List<Board> boards = role(Board.class, Optional.of(brief.parts().board()));
        List<Processor> processors = role(
                        Processor.class, Optional.of(brief.parts().processor()))
                .stream()
                .filter(p -> p.performance()
                        >= brief.parts().processor().performanceMin().orElse(0))
                .toList();
        List<GraphicsCard> cards = role(
                        GraphicsCard.class, Optional.of(brief.parts().card()))
                .stream()
                .filter(c ->
                        c.performance() >= brief.parts().card().performanceMin().orElse(0))
                .toList();
        List<Memory> kits = role(Memory.class, Optional.of(brief.parts().memory()));
        List<Block> blocks = role(Block.class, Optional.of(brief.parts().processorBlock()));
        List<Supply> supplies = role(Supply.class, brief.parts().supply());
        List<Pump> pumps = role(Pump.class, brief.loop().pumps());
        List<Reservoir> reservoirs = role(Reservoir.class, brief.loop().reservoirs());
        List<Drive> drives = brief.parts().drives().stream()
                .map(id -> catalog.part(Drive.class, id))
                .toList();
        IntVar board = pick("board", boards);
        IntVar processor = pick("processor", processors);
        IntVar card = pick("card", cards);
        IntVar kit = pick("memory", kits);
        IntVar block = pick("block", blocks);
        IntVar supply = pick("supply", supplies);
        IntVar pump = pick("pump", pumps);
        IntVar reservoir = logic.model.intVar("reservoir", NOWHERE, reservoirs.size() - 1);
        decisions.add(reservoir);
        plugged(new IntVar[] {board, processor, kit, block}, boards, processors, kits, blocks, drives);
        powered(
                new IntVar[] {board, processor, card, supply, pump},
                boards,
                processors,
                cards,
                supplies,
                pumps,
                drives);
        for (int i = 0; i < pumps.size(); i++) {
            boolean alone = pumps.get(i).kind() == Pump.Kind.PUMP;
            BoolVar none = logic.is(reservoir, NOWHERE);
            logic.rule(List.of(logic.is(pump, i)), List.of(alone ? none.not() : none));
        }
        for (int b = 0; b < boards.size(); b++) {
            BoolVar here = logic.is(board, b);
            board(boards.get(b), onBoard(here));
            for (int m = 0; m < kits.size(); m++) {
                memory(boards.get(b), kits.get(m), onBoard(here, logic.is(kit, m)));
            }
            for (int k = 0; k < blocks.size(); k++) {
                block(boards.get(b), blocks.get(k), onBoard(here, logic.is(block, k)));
            }
            for (int c = 0; c < cards.size(); c++) {
                card(boards.get(b), cards.get(c), onBoard(here, logic.is(card, c)));
            }
        }
        IntVar supplyAt = place("supply", false);
        each(supply, supplies, supplyAt, s -> Place.Holds.valueOf(s.form().name()), Supply::body, Supply::plugRoomMm);
        for (int d = 0; d < drives.size(); d++) {
            if (drives.get(d).form() != Drive.DriveForm.M2) {
                IntVar one = logic.model.intVar("drive" + d, 0);
                each(
                        one,
                        List.of(drives.get(d)),
                        place("drive" + d, false),
                        v -> Place.Holds.valueOf(v.form().name()),
                        Drive::body,
                        Drive::plugRoomMm);
            }
        }
        each(
                pump,
                pumps,
                place("pump", false),
                p -> Place.Holds.valueOf(p.kind().name()),
                Pump::body,
                p -> p.water().portRoomMm());
        IntVar reservoirAt = place("reservoir", true);
        logic.rule(List.of(logic.is(reservoir, NOWHERE)), List.of(logic.is(reservoirAt, NOWHERE)));
        logic.rule(List.of(logic.is(reservoirAt, NOWHERE)), List.of(logic.is(reservoir, NOWHERE)));
        each(reservoir, reservoirs, reservoirAt, r -> Place.Holds.RESERVOIR, Reservoir::body, Reservoir::portRoomMm);
        for (int i = 0; i < placeVars.size(); i++) {
            for (int j = 0; j < i; j++) {
                for (int p = 0; p < inside.places().size(); p++) {
                    logic.rule(List.of(logic.is(placeVars.get(i), p), logic.is(placeVars.get(j), p)), List.of());
                }
            }
        }
    }

    private <P extends Part> List<P> role(Class<P> kind, Optional<Choice> choice) {
        List<String> any = choice.map(Choice::anyOf).orElse(List.of());
        return catalog.all(kind).stream()
                .filter(p -> any.isEmpty() || any.contains(p.id()))
                .toList();
    }

    private IntVar pick(String name, List<?> from) {
        IntVar out = logic.model.intVar(name, 0, Math.max(0, from.size() - 1));
        if (from.isEmpty()) {
            logic.model.falseConstraint().post();
        }
        decisions.add(out);
        return out;
    }

    private void table(IntVar[] vars, List<int[]> rows) {
        Tuples tuples = new Tuples(true);
        rows.forEach(tuples::add);
        if (rows.isEmpty()) {
            logic.model.falseConstraint().post();
        } else {
            logic.model.table(vars, tuples).post();
        }
    }

    private void plugged(
            IntVar[] vars,
            List<Board> boards,
            List<Processor> processors,
            List<Memory> kits,
            List<Block> blocks,
            List<Drive> drives) {
        int m2 = (int)
                drives.stream().filter(d -> d.form() == Drive.DriveForm.M2).count();
        List<int[]> rows = new ArrayList<>();
        for (int b = 0; b < boards.size(); b++) {
            Board board = boards.get(b);
            if (!inside.board().forms().contains(board.form())
                    || board.electric().m2Sockets() < m2
                    || board.electric().sataPorts() < drives.size() - m2) {
                continue;
            }
            for (int c = 0; c < processors.size(); c++) {
                String socket = processors.get(c).socket();
                for (int k = 0; k < kits.size(); k++) {
                    Board.MemoryBank bank = board.sockets().memory();
                    boolean kitFits = kits.get(k).generation().equals(bank.generation())
                            && kits.get(k).modules() <= bank.sockets();
                    for (int w = 0; w < blocks.size(); w++) {
                        if (kitFits
                                && socket.equals(board.sockets().processorSocket())
                                && blocks.get(w).sockets().contains(socket)) {
                            rows.add(new int[] {b, c, k, w});
                        }
                    }
                }
            }
        }
        table(vars, rows);
    }

    private void powered(
            IntVar[] vars,
            List<Board> boards,
            List<Processor> processors,
            List<GraphicsCard> cards,
            List<Supply> supplies,
            List<Pump> pumps,
            List<Drive> drives) {
        List<int[]> rows = new ArrayList<>();
        CElectric electric = new CElectric(catalog, brief, drives);
        int[] sizes = {boards.size(), processors.size(), cards.size(), supplies.size(), pumps.size()};
        int combinations = IntStream.of(sizes).reduce(1, (a, b) -> a * b);
        for (int n = 0; n < combinations; n++) {
            int[] at = new int[5];
            int rest = n;
            for (int i = 0; i < 5; i++) {
                at[i] = rest % sizes[i];
                rest /= sizes[i];
            }
            if (electric.feeds(
                    supplies.get(at[3]),
                    boards.get(at[0]),
                    processors.get(at[1]),
                    cards.get(at[2]),
                    pumps.get(at[4]))) {
                rows.add(at);
            }
        }
        table(vars, rows);
    }

    private CBody onBoard(BoolVar... when) {
        CBody out = new CBody(List.of(when), "", true)
                .may(inside.board().against(), inside.board().touches());
        bodies.add(out);
        return out;
    }

    private void board(Board board, CBody body) {
        Pose bay = inside.board().pose();
        for (Standards.BoardOutline outline : catalog.standards().boards()) {
            if (outline.form() == board.form()) {
                CEdge down = body.edge(catalog.practice().room().boardThicknessMm());
                body.local(
                        bay,
                        new Ends(CEdge.ORIGIN, body.edge(outline.lengthMm())),
                        new Ends(CEdge.ORIGIN, body.edge(outline.widthMm())),
                        new Ends(down.negative(), CEdge.ORIGIN),
                        false);
            }
        }
        for (Board.Zone zone : board.zones()) {
            java.util.function.Function<Span, Ends> read = zone.room()
                    ? span -> new Ends(body.kept(span.from()), body.kept(span.to()))
                    : span -> ends(body, span);
            body.local(
                    bay,
                    read.apply(zone.lengthMm()),
                    read.apply(zone.widthMm()),
                    read.apply(zone.heightMm()),
                    zone.room());
        }
    }

    private static Ends ends(CBody body, Span span) {
        return new Ends(body.edge(span.from()), body.edge(span.to()));
    }

    private void memory(Board board, Memory kit, CBody body) {
        Board.MemoryBank bank = board.sockets().memory();
        Ends up = new Ends(CEdge.ORIGIN, body.edge(kit.heightMm()));
        body.local(inside.board().pose(), ends(body, bank.lengthMm()), ends(body, bank.widthMm()), up, false);
    }

    private void block(Board board, Block block, CBody body) {
        CEdge l = body.edge(board.sockets().processorLengthMm());
        CEdge w = body.edge(board.sockets().processorWidthMm());
        body.mm(block.body().lengthMm());
        body.mm(block.body().widthMm());
        CEdge dl = CEdge.halfOf(block.body().lengthMm());
        CEdge dw = CEdge.halfOf(block.body().widthMm());
        CEdge top = body.edge(block.body().heightMm());
        Ends along = new Ends(l.less(dl), l.and(dl));
        Ends across = new Ends(w.less(dw), w.and(dw));
        body.local(inside.board().pose(), along, across, new Ends(CEdge.ORIGIN, top), false);
        Ends over = new Ends(top, top.and(body.kept(block.portRoomMm())));
        body.local(inside.board().pose(), along, across, over, true);
    }

    private void card(Board board, GraphicsCard card, CBody body) {
        CEdge slot = body.edge(board.sockets().slotLengthMm());
        Ends thick = new Ends(slot, slot.and(body.edge(card.body().thicknessMm())));
        CEdge far = body.edge(card.body().lengthMm());
        CEdge high = body.edge(card.body().heightMm());
        CEdge room = body.kept(card.body().topRoomMm());
        Ends up = new Ends(CEdge.ORIGIN, high);
        body.local(inside.board().pose(), thick, new Ends(CEdge.ORIGIN, far), up, false);
        if (room.at() > 0) {
            Ends end = new Ends(far.less(body.kept(card.body().topRoomLengthMm())), far);
            body.local(inside.board().pose(), thick, end, new Ends(high, high.and(room)), true);
        }
    }

    private IntVar place(String name, boolean orNowhere) {
        IntVar out = logic.model.intVar(
                name + "-at",
                orNowhere ? NOWHERE : 0,
                Math.max(0, inside.places().size() - 1));
        placeVars.add(out);
        decisions.add(out);
        return out;
    }

    /** Each part of a role in each place: a body if the place holds it, else not allowed. */
    private <P extends Part> void each(
            IntVar part,
            List<P> parts,
            IntVar at,
            java.util.function.Function<P, Place.Holds> form,
            java.util.function.Function<P, SizeMm> size,
            java.util.function.Function<P, Dimension> room) {
        for (int p = 0; p < inside.places().size(); p++) {
            Place place = inside.places().get(p);
            BoolVar here = logic.is(at, p);
            usable(place, here);
            for (int i = 0; i < parts.size(); i++) {
                List<BoolVar> when = List.of(logic.is(part, i), here);
                if (!place.holds().contains(form.apply(parts.get(i)))) {
                    logic.rule(when, List.of());
                    continue;
                }
                CBody body = new CBody(when, "", false).may(place.against(), place.touches());
                SizeMm s = size.apply(parts.get(i));
                CEdge far = body.edge(s.lengthMm());
                Ends wide = new Ends(CEdge.ORIGIN, body.edge(s.widthMm()));
                Ends high = new Ends(CEdge.ORIGIN, body.edge(s.heightMm()));
                body.local(place.pose(), new Ends(CEdge.ORIGIN, far), wide, high, false);
                CEdge end = far.and(body.kept(room.apply(parts.get(i))));
                body.local(place.pose(), new Ends(far, end), wide, high, true);
                bodies.add(body);
            }
        }
        if (inside.places().isEmpty()) {
            logic.model.falseConstraint().post();
        }
    }

    private void usable(Place place, BoolVar used) {
        List<BoolVar> openers = new ArrayList<>();
        for (int m = 0; m < mods.size(); m++) {
            Mod.Effect effect = mods.get(m).effect();
            if (effect.closesPlaces().contains(place.id())
                    || place.inside().filter(effect.removes()::contains).isPresent()) {
                logic.rule(List.of(used, done.get(m)), List.of());
            }
            if (effect.opensPlaces().contains(place.id())) {
                openers.add(done.get(m));
            }
        }
        if (!openers.isEmpty()) {
            logic.rule(List.of(used), openers);
        }
    }
}
