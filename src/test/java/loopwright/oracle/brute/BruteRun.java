package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.Shell;
import loopwright.oracle.LayoutText;
import loopwright.oracle.ModSetOrder;
import loopwright.oracle.OracleCase;

/** One walk through one case, either without unknown bodies or with them. */
final class BruteRun {
    private final OracleCase question;
    private final BruteApart apart;
    private final Fault fault;
    private final boolean allowUnknown;
    private final int[] insideHmm;
    private final List<BruteShape> shapes;
    private final BruteRange range;
    private final List<SortedSet<String>> validSets;
    private final Map<String, BruteBody> stacks = new HashMap<>();
    private final SortedMap<String, SortedSet<SortedSet<String>>> found = new TreeMap<>();
    private boolean leftOut;

    BruteRun(OracleCase question, BruteApart apart, Fault fault, boolean allowUnknown) {
        this.question = question;
        this.apart = apart;
        this.fault = fault;
        this.allowUnknown = allowUnknown;
        Shell.Interior interior = question.chassis().shell().interior();
        insideHmm = new int[] {
            interior.widthMm().valueHmm(),
            interior.depthMm().valueHmm(),
            interior.heightMm().valueHmm()
        };
        shapes = BruteShape.all(question.catalog(), question.brief().loop());
        range = new BruteRange(question.catalog(), question.brief().limits().freeAreaMin(), fault);
        validSets = BruteForce.validSets(question);
    }

    List<SortedSet<String>> validSets() {
        return validSets;
    }

    boolean leftOut() {
        return leftOut || range.leftOut();
    }

    SortedMap<String, SortedSet<SortedSet<String>>> fits() {
        BruteChoices choices = new BruteChoices(question.catalog(), question.chassis(), question.brief(), fault);
        for (SortedSet<String> set : validSets) {
            List<BruteWorld> worlds = new ArrayList<>();
            for (List<BruteBody> bodies : choices.worlds(set)) {
                boolean unknown = bodies.stream().anyMatch(BruteBody::unknown);
                BruteWorld world = new BruteWorld(bodies, apart, fault);
                if (world.standsWithoutStacks()) {
                    leftOut |= unknown && !allowUnknown;
                    if (!unknown || allowUnknown) {
                        worlds.add(world);
                    }
                }
            }
            hang(set, worlds, hangable(set), 0, new ArrayList<>(), "");
        }
        return found;
    }

    /** For each mount, the shapes that have a position, with those positions. */
    private List<List<Hanging>> hangable(SortedSet<String> set) {
        Chassis chassis = question.chassis();
        List<Mod> mods =
                chassis.mods().stream().filter(m -> set.contains(m.id())).toList();
        List<List<Hanging>> out = new ArrayList<>();
        for (Mount mount : chassis.mounts()) {
            List<Hanging> here = new ArrayList<>();
            Face face = chassis.shell().panels().stream()
                    .filter(p -> p.id().equals(mount.panel()))
                    .map(Panel::face)
                    .findFirst()
                    .orElseThrow();
            for (int i = 0; i < shapes.size(); i++) {
                BruteShape shape = shapes.get(i);
                BruteBody body = stacks.computeIfAbsent(mount.id() + "#" + i, key -> stack(face, mount, shape));
                if (body.unknown() && !allowUnknown) {
                    leftOut = true;
                    continue;
                }
                List<int[]> positions = range.positions(mount, shape, mods, allowUnknown);
                if (!positions.isEmpty()) {
                    int axisU = Xyz.of(mount.lengthwise());
                    int axisV = Xyz.of(BruteStack.sideways(face, mount));
                    here.add(new Hanging(mount.id(), shape.text(), body, axisU, axisV, positions));
                }
            }
            out.add(here);
        }
        return out;
    }

    private BruteBody stack(Face face, Mount mount, BruteShape shape) {
        int less = fault == Fault.NEED_OFF_BY_ONE ? 1 : 0;
        return new BruteStack(question.catalog().practice().room(), face, mount, shape, insideHmm, less).body();
    }

    private void hang(
            SortedSet<String> set,
            List<BruteWorld> worlds,
            List<List<Hanging>> hangable,
            int mount,
            List<Hanging> chosen,
            String text) {
        if (mount == hangable.size()) {
            boolean seen = found.containsKey(text) && found.get(text).contains(set);
            if (!chosen.isEmpty() && !seen && worlds.stream().anyMatch(w -> w.takes(chosen))) {
                found.computeIfAbsent(text, t -> ModSetOrder.sets()).add(set);
            }
            return;
        }
        hang(set, worlds, hangable, mount + 1, chosen, text);
        for (Hanging hanging : hangable.get(mount)) {
            chosen.add(hanging);
            hang(set, worlds, hangable, mount + 1, chosen, LayoutText.with(text, hanging.mount(), hanging.text()));
            chosen.remove(chosen.size() - 1);
        }
    }

    /** A stack with the positions its slots give it. */
    record Hanging(String mount, String text, BruteBody body, int axisU, int axisV, List<int[]> positions) {
        BruteBody at(int[] position) {
            List<BruteBox> moved = body.boxes().stream()
                    .map(b -> b.moved(axisU, position[0], axisV, position[1]))
                    .toList();
            return new BruteBody(body.sort(), body.id(), body.unknown(), moved, body.against(), body.touches());
        }
    }
}
