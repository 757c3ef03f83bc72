package loopwright.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import loopwright.fit.Scene.Setting;

/**
 * What walls, built-in bodies, placed parts and other stacks ask of stacks, as strictly as the search or at nominal
 * dimensions; gathered once a hang and kept.
 */
final class WayDemands {

    private final PairTable pairs;
    private final Strictness strictness;
    private final Map<List<Integer>, Map<Integer, Demands>> ofBuiltIn = new HashMap<>();
    private final IdentityHashMap<Setting, Map<Integer, Demands>> ofSetting = new IdentityHashMap<>();
    private final Map<Long, Demands> ofHangs = new HashMap<>();

    WayDemands(PairTable pairs, Strictness strictness) {
        this.pairs = pairs;
        this.strictness = strictness;
    }

    /** No margin beyond this is possible for these hangs, hundredths of a millimetre. */
    int most(List<Hang> hangs, Setting setting, Scene scene) {
        int most = Integer.MAX_VALUE;
        for (Demands one : all(hangs, setting, scene)) {
            most = Math.min(most, one.most());
        }
        return most;
    }

    /** The disjunctions that these hangs are not sure to keep at a margin. */
    List<int[]> open(List<Hang> hangs, Setting setting, Scene scene, int marginHmm) {
        List<int[]> out = new ArrayList<>();
        for (Demands one : all(hangs, setting, scene)) {
            one.addOpen(out, marginHmm);
        }
        return out;
    }

    private List<Demands> all(List<Hang> hangs, Setting setting, Scene scene) {
        Map<Integer, Demands> placed = ofSetting.computeIfAbsent(setting, s -> new HashMap<>());
        Map<Integer, Demands> built = ofBuiltIn.computeIfAbsent(scene.builtIn(), b -> new HashMap<>());
        List<Demands> out = new ArrayList<>();
        for (int i = 0; i < hangs.size(); i++) {
            Hang hang = hangs.get(i);
            out.add(built.computeIfAbsent(
                    hang.id(), k -> gathered(hang, scene.builtIn(), pairs.wallSides(hang, strictness))));
            out.add(placed.computeIfAbsent(hang.id(), k -> gathered(hang, setting.bodies(), List.of())));
            for (int j = 0; j < i; j++) {
                Hang other = hangs.get(j);
                out.add(ofHangs.computeIfAbsent(
                        (long) other.id() << 32 | hang.id(),
                        k -> Demands.of(pairs.sides(other, hang, strictness), pairs.domains(List.of(other, hang)))));
            }
        }
        return out;
    }

    private Demands gathered(Hang hang, List<Integer> bodies, List<int[]> more) {
        List<int[]> sides = new ArrayList<>(more);
        bodies.forEach(b -> sides.addAll(pairs.sides(hang, b, strictness)));
        return Demands.of(sides, pairs.domains(List.of(hang)));
    }
}
