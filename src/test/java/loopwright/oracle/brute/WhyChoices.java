package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.brief.Wanted;
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
import loopwright.oracle.OracleCase;

/** Every choice of parts, also such as the brief does not want and such as do not go together. */
final class WhyChoices {
    private final OracleCase question;
    private final List<WhyWish.PartFor> wishes;
    private final WhyFacts facts;
    private final int mostOutside;
    private final BruteElectric electric;
    private final List<Drive> drives = new ArrayList<>();
    private final List<Filled> all = new ArrayList<>();
    private final List<Role> roles;

    /** A role and who may fill it. */
    private record Role(String word, Class<? extends Part> kind, Optional<Choice> choice) {}

    /** Parts by role, and what they break by themselves. */
    record Filled(Map<String, Part> parts, Broken broken) {
        <P extends Part> P the(String role, Class<P> kind) {
            return kind.cast(parts.get(role));
        }
    }

    WhyChoices(OracleCase question, List<WhyWish> wishes, WhyFacts facts, WhyFault fault) {
        this.question = question;
        this.wishes = wishes.stream()
                .filter(WhyWish.PartFor.class::isInstance)
                .map(WhyWish.PartFor.class::cast)
                .toList();
        this.facts = facts;
        this.mostOutside = fault == WhyFault.TWO_ROLES ? 2 : 1;
        Fault forgotten = fault == WhyFault.TWELVE_VOLT_FORGOTTEN ? Fault.TWELVE_VOLT_IGNORED : Fault.NONE;
        this.electric = new BruteElectric(question.catalog(), question.brief(), forgotten);
        Wanted want = question.brief().parts();
        LoopWish loop = question.brief().loop();
        want.drives().forEach(id -> drives.add(question.catalog().part(Drive.class, id)));
        this.roles = List.of(
                new Role("board", Board.class, Optional.of(want.board())),
                new Role("processor", Processor.class, Optional.of(want.processor())),
                new Role("card", GraphicsCard.class, Optional.of(want.card())),
                new Role("memory", Memory.class, Optional.of(want.memory())),
                new Role("block", Block.class, Optional.of(want.processorBlock())),
                new Role("supply", Supply.class, want.supply()),
                new Role("pump", Pump.class, loop.pumps()),
                new Role("reservoir", Reservoir.class, loop.reservoirs()));
        fill(0, new LinkedHashMap<>(), Broken.NOTHING, 0);
    }

    List<Filled> all() {
        return all;
    }

    /** Drives that need a place, in the brief's order. */
    List<Drive> placedDrives() {
        return drives.stream().filter(d -> d.form() != Drive.DriveForm.M2).toList();
    }

    private void fill(int next, Map<String, Part> parts, Broken broken, int outside) {
        if (next == roles.size()) {
            all.add(new Filled(new LinkedHashMap<>(parts), broken.or(together(new Filled(parts, broken)))));
            return;
        }
        Role role = roles.get(next);
        if (role.kind() == Reservoir.class
                && new Filled(parts, broken).the("pump", Pump.class).kind() == Pump.Kind.PUMP_RESERVOIR) {
            fill(next + 1, parts, broken.or(wishes(role.word(), "")), outside);
            return;
        }
        for (Part part : question.catalog().all(role.kind())) {
            boolean own = isOwn(role, part);
            if (own || outside < mostOutside) {
                parts.put(role.word(), part);
                Broken more = broken.or(wishes(role.word(), part.id()));
                fill(
                        next + 1,
                        parts,
                        own ? more : more.or(facts.fact("choice:" + role.word())),
                        own ? outside : outside + 1);
                parts.remove(role.word());
            }
        }
    }

    private Broken wishes(String role, String id) {
        Broken out = Broken.NOTHING;
        for (WhyWish.PartFor wish : wishes) {
            if (wish.role().equals(role) && !wish.id().equals(id)) {
                out = out.or(facts.fact(wish.fact()));
            }
        }
        return out;
    }

    private boolean isOwn(Role role, Part part) {
        boolean wished = wishes.stream().anyMatch(w -> w.role().equals(role.word()) && w.id().equals(part.id()));
        if (wished || role.choice().isEmpty()) {
            return true;
        }
        Choice choice = role.choice().get();
        return (choice.anyOf().isEmpty() || choice.anyOf().contains(part.id()))
                && BruteChoices.fastEnough(part, choice);
    }

    private Broken together(Filled f) {
        Board board = f.the("board", Board.class);
        Processor processor = f.the("processor", Processor.class);
        Memory memory = f.the("memory", Memory.class);
        Map<String, Boolean> rules = new LinkedHashMap<>();
        long onBoard =
                drives.stream().filter(d -> d.form() == Drive.DriveForm.M2).count();
        long sata = drives.size() - onBoard;
        rules.put(
                "parts.processor-socket",
                processor.socket().equals(board.sockets().processorSocket()));
        rules.put("parts.block-socket", f.the("block", Block.class).sockets().contains(processor.socket()));
        rules.put(
                "parts.memory",
                memory.generation().equals(board.sockets().memory().generation())
                        && memory.modules() <= board.sockets().memory().sockets());
        rules.put(
                "parts.board-form", question.chassis().inside().board().forms().contains(board.form()));
        rules.put(
                "parts.drive-ports",
                onBoard <= board.electric().m2Sockets()
                        && sata <= board.electric().sataPorts());
        Broken broken = Broken.NOTHING;
        for (Map.Entry<String, Boolean> rule : rules.entrySet()) {
            broken = rule.getValue() ? broken : broken.or(facts.fact("parts:" + rule.getKey()));
        }
        BruteElectric.Asking asking = new BruteElectric.Asking(
                board, processor, f.the("card", GraphicsCard.class), f.the("pump", Pump.class));
        for (String rule : electric.broken(asking, f.the("supply", Supply.class))) {
            broken = broken.or(facts.fact("parts:" + rule));
        }
        return broken;
    }
}
