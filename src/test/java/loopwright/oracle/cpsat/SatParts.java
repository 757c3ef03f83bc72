package loopwright.oracle.cpsat;

import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.chassis.Chassis;
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
import loopwright.quantity.Dimension;

/** Parts, places and electrics for one mod set: one literal for each part of a role and each part in a place. */
final class SatParts {
    final List<SatBody> bodies = new ArrayList<>();
    private final SatFacts facts;
    private final Catalog catalog;
    private final Chassis chassis;
    private final Brief brief;
    private final Set<String> mods;
    private final Map<Place, List<Literal>> taken = new LinkedHashMap<>();

    SatParts(SatFacts facts, Catalog catalog, Chassis chassis, Brief brief, Set<String> mods) {
        this.facts = facts;
        this.catalog = catalog;
        this.chassis = chassis;
        this.brief = brief;
        this.mods = mods;
        chassis.inside().places().stream().filter(this::usable).forEach(p -> taken.put(p, new ArrayList<>()));
    }

    private boolean usable(Place place) {
        List<Mod> all = chassis.mods();
        List<Mod> done = all.stream().filter(m -> mods.contains(m.id())).toList();
        boolean needsOpening =
                all.stream().anyMatch(m -> m.effect().opensPlaces().contains(place.id()));
        boolean opened = done.stream().anyMatch(m -> m.effect().opensPlaces().contains(place.id()));
        boolean lost = done.stream()
                .anyMatch(m -> m.effect().closesPlaces().contains(place.id())
                        || place.inside()
                                .map(r -> m.effect().removes().contains(r))
                                .orElse(false));
        return !lost && (opened || !needsOpening);
    }

    void post() {
        Map<Board, Literal> boards = role(Board.class, Optional.of(brief.parts().board()), b -> 1000);
        Map<Processor, Literal> processors =
                role(Processor.class, Optional.of(brief.parts().processor()), Processor::performance);
        Map<GraphicsCard, Literal> cards =
                role(GraphicsCard.class, Optional.of(brief.parts().card()), GraphicsCard::performance);
        Map<Memory, Literal> kits = role(Memory.class, Optional.of(brief.parts().memory()), m -> 1000);
        Map<Block, Literal> blocks = role(Block.class, Optional.of(brief.parts().processorBlock()), b -> 1000);
        Map<Supply, Literal> supplies = role(Supply.class, brief.parts().supply(), s -> 1000);
        Map<Pump, Literal> pumps = role(Pump.class, brief.loop().pumps(), p -> 1000);
        List<Drive> drives = brief.parts().drives().stream()
                .map(id -> catalog.part(Drive.class, id))
                .toList();
        List<Drive> cabled =
                drives.stream().filter(d -> d.form() != Drive.DriveForm.M2).toList();
        boards.forEach((b, on) -> {
            if (!chassis.inside().board().forms().contains(b.form())
                    || b.electric().m2Sockets() < drives.size() - cabled.size()
                    || b.electric().sataPorts() < cabled.size()) {
                facts.rule(List.of(on), List.of());
            }
            forbid(on, processors, p -> !p.socket().equals(b.sockets().processorSocket()));
            forbid(on, blocks, k -> !k.sockets().contains(b.sockets().processorSocket()));
            forbid(
                    on,
                    kits,
                    m -> !m.generation().equals(b.sockets().memory().generation())
                            || m.modules() > b.sockets().memory().sockets());
            board(b, add(on));
            kits.forEach((m, x) -> memory(b, m, add(on, x)));
            blocks.forEach((k, x) -> block(b, k, add(on, x)));
            cards.forEach((c, x) -> card(b, c, add(on, x)));
        });
        new SatElectric(facts, catalog, brief, drives).post(boards, processors, cards, pumps, supplies);
        supplies.forEach((s, on) -> somewhere(on, Place.Holds.valueOf(s.form().name()), s.body(), s.plugRoomMm()));
        cabled.forEach(d -> somewhere(facts.yes(), Place.Holds.valueOf(d.form().name()), d.body(), d.plugRoomMm()));
        List<Literal> alone = new ArrayList<>();
        pumps.forEach((p, on) -> {
            somewhere(
                    on,
                    Place.Holds.valueOf(p.kind().name()),
                    p.body(),
                    p.water().portRoomMm());
            if (p.kind() == Pump.Kind.PUMP) {
                alone.add(on);
            }
        });
        reservoirs(alone);
        taken.values().forEach(facts.model::addAtMostOne);
    }

    private void reservoirs(List<Literal> alone) {
        List<Literal> chosen = new ArrayList<>();
        List<String> any = brief.loop().reservoirs().map(Choice::anyOf).orElse(List.of());
        for (Reservoir r : catalog.all(Reservoir.class)) {
            if (any.isEmpty() || any.contains(r.id())) {
                Literal on = facts.model.newBoolVar(r.id());
                chosen.add(on);
                facts.rule(List.of(on), alone);
                somewhere(on, Place.Holds.RESERVOIR, r.body(), r.portRoomMm());
            }
        }
        facts.model.addAtMostOne(chosen);
        alone.forEach(a -> facts.rule(List.of(a), chosen));
    }

    private <P extends Part> Map<P, Literal> role(Class<P> kind, Optional<Choice> choice, ToIntFunction<P> speed) {
        Map<P, Literal> out = new LinkedHashMap<>();
        for (P part : catalog.all(kind)) {
            boolean named = choice.map(c -> c.anyOf().isEmpty() || c.anyOf().contains(part.id()))
                    .orElse(true);
            boolean fast = choice.flatMap(Choice::performanceMin)
                    .map(floor -> speed.applyAsInt(part) >= floor)
                    .orElse(true);
            if (named && fast) {
                out.put(part, facts.model.newBoolVar(part.id()));
            }
        }
        facts.model.addExactlyOne(out.values());
        return out;
    }

    private <P> void forbid(Literal with, Map<P, Literal> role, java.util.function.Predicate<P> wrong) {
        role.forEach((part, on) -> {
            if (wrong.test(part)) {
                facts.rule(List.of(with, on), List.of());
            }
        });
    }

    private static int off(Dimension dimension) {
        return dimension.plusMinusHmm();
    }

    private SatBody add(Literal... when) {
        Inside.BoardBay bay = chassis.inside().board();
        SatBody out = new SatBody(List.of(when), "board", free(bay.against(), bay.touches()));
        bodies.add(out);
        return out;
    }

    static List<String> free(List<loopwright.catalog.basis.Face> walls, List<String> ids) {
        List<String> out = new ArrayList<>();
        walls.forEach(w -> out.add(w.name()));
        ids.forEach(id -> out.add("case:" + id));
        return out;
    }

    private void board(Board b, SatBody body) {
        Pose pose = chassis.inside().board().pose();
        catalog.standards().boards().stream().filter(o -> o.form() == b.form()).forEach(o -> {
            int down = -body.read(catalog.practice().room().boardThicknessMm());
            List<Integer> six = List.of(0, body.read(o.lengthMm()), 0, body.read(o.widthMm()), down, 0);
            int thick = catalog.practice().room().boardThicknessMm().plusMinusHmm();
            body.inPose(pose, false, six, Doubt.whole(0, off(o.lengthMm()), 0, off(o.widthMm()), thick, 0));
        });
        for (Board.Zone z : b.zones()) {
            List<Integer> six = new ArrayList<>();
            List<Integer> doubts = new ArrayList<>();
            List.of(z.lengthMm(), z.widthMm(), z.heightMm()).forEach(s -> {
                six.add(body.read(s.from()));
                six.add(body.read(s.to()));
                doubts.add(z.room() ? 0 : 2 * off(s.from()));
                doubts.add(z.room() ? 0 : 2 * off(s.to()));
            });
            body.inPose(pose, z.room(), six, doubts);
        }
    }

    private void memory(Board b, Memory m, SatBody body) {
        Board.MemoryBank bank = b.sockets().memory();
        List<Integer> six = List.of(
                body.read(bank.lengthMm().from()),
                body.read(bank.lengthMm().to()),
                body.read(bank.widthMm().from()),
                body.read(bank.widthMm().to()),
                0,
                body.read(m.heightMm()));
        List<Integer> doubts = Doubt.whole(
                off(bank.lengthMm().from()),
                off(bank.lengthMm().to()),
                off(bank.widthMm().from()),
                off(bank.widthMm().to()),
                0,
                off(m.heightMm()));
        body.inPose(chassis.inside().board().pose(), false, six, doubts);
    }

    private void block(Board b, Block k, SatBody body) {
        int l = body.read(b.sockets().processorLengthMm()) - body.read(k.body().lengthMm()) / 2;
        int w = body.read(b.sockets().processorWidthMm()) - body.read(k.body().widthMm()) / 2;
        int l2 = l + body.read(k.body().lengthMm());
        int w2 = w + body.read(k.body().widthMm());
        int h = body.read(k.body().heightMm());
        Pose pose = chassis.inside().board().pose();
        int dl = 2 * off(b.sockets().processorLengthMm()) + off(k.body().lengthMm());
        int dw = 2 * off(b.sockets().processorWidthMm()) + off(k.body().widthMm());
        int dh = 2 * off(k.body().heightMm());
        body.inPose(pose, false, List.of(l, l2, w, w2, 0, h), List.of(dl, dl, dw, dw, 0, dh));
        List<Integer> over = List.of(l, l2, w, w2, h, h + body.read(k.portRoomMm()));
        body.inPose(pose, true, over, List.of(dl, dl, dw, dw, dh, dh));
    }

    private void card(Board b, GraphicsCard c, SatBody body) {
        GraphicsCard.Body size = c.body();
        int from = body.read(b.sockets().slotLengthMm());
        int to = from + body.read(size.thicknessMm());
        int end = body.read(size.lengthMm());
        int top = body.read(size.heightMm());
        Pose pose = chassis.inside().board().pose();
        int slot = off(b.sockets().slotLengthMm());
        int thick = slot + off(size.thicknessMm());
        int far = off(size.lengthMm());
        int high = off(size.heightMm());
        body.inPose(pose, false, List.of(from, to, 0, end, 0, top), Doubt.whole(slot, thick, 0, far, 0, high));
        int over = body.read(size.topRoomMm());
        if (over > 0) {
            List<Integer> six = List.of(from, to, end - body.read(size.topRoomLengthMm()), end, top, top + over);
            body.inPose(pose, true, six, Doubt.whole(slot, thick, far, far, high, high));
        }
    }

    private void somewhere(Literal on, Place.Holds form, SizeMm size, Dimension room) {
        List<Literal> ways = new ArrayList<>();
        Function<Place, Literal> literal = p -> facts.model.newBoolVar(p.id());
        taken.forEach((place, users) -> {
            if (place.holds().contains(form)) {
                Literal here = literal.apply(place);
                ways.add(here);
                users.add(here);
                SatBody body = new SatBody(List.of(here), "", free(place.against(), place.touches()));
                int l = body.read(size.lengthMm());
                int w = body.read(size.widthMm());
                int h = body.read(size.heightMm());
                int far = off(size.lengthMm());
                int wide = off(size.widthMm());
                int high = off(size.heightMm());
                body.inPose(place.pose(), false, List.of(0, l, 0, w, 0, h), Doubt.whole(0, far, 0, wide, 0, high));
                List<Integer> beyond = List.of(l, l + body.read(room), 0, w, 0, h);
                body.inPose(place.pose(), true, beyond, Doubt.whole(far, far, 0, wide, 0, high));
                bodies.add(body);
            }
        });
        facts.rule(List.of(on), ways);
    }
}
