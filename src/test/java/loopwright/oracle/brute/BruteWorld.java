package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import loopwright.catalog.basis.Face;

/** All bodies of one mod set and choice, into which stacks are hung. */
final class BruteWorld {
    private final List<BruteBody> bodies;
    private final BruteApart apart;
    private final Fault fault;
    private final boolean rooms;
    private final IdentityHashMap<BruteRun.Hanging, List<BruteBody>> alone = new IdentityHashMap<>();

    BruteWorld(List<BruteBody> bodies, BruteApart apart, Fault fault) {
        this.bodies = bodies;
        this.apart = apart;
        this.fault = fault;
        this.rooms = fault == Fault.ROOM_WITH_ROOM;
    }

    boolean standsWithoutStacks() {
        for (int i = 0; i < bodies.size(); i++) {
            for (Face wall : Face.values()) {
                if (!bodies.get(i).clearOf(wall, apart)) {
                    return false;
                }
            }
            for (int j = 0; j < i; j++) {
                if (!bodies.get(i).clearOf(bodies.get(j), rooms, apart)) {
                    return false;
                }
            }
        }
        return true;
    }

    boolean takes(List<BruteRun.Hanging> stacks) {
        return switch (fault) {
            case PAIRS_ONLY -> stacks.stream().allMatch(this::eachBodyAlone) && pairs(stacks, false);
            case STACK_PAIRS_ONLY -> stacks.stream().noneMatch(s -> alone(s).isEmpty()) && pairs(stacks, true);
            case FIRST_POSITION -> first(stacks);
            default -> together(stacks, 0, new ArrayList<>());
        };
    }

    private boolean together(List<BruteRun.Hanging> stacks, int next, List<BruteBody> placed) {
        if (next == stacks.size()) {
            return true;
        }
        for (BruteBody here : alone(stacks.get(next))) {
            if (placed.stream().allMatch(other -> here.clearOf(other, rooms, apart))) {
                placed.add(here);
                if (together(stacks, next + 1, placed)) {
                    return true;
                }
                placed.remove(placed.size() - 1);
            }
        }
        return false;
    }

    /** The stack at each position where it clears the walls and all that stands here already. */
    private List<BruteBody> alone(BruteRun.Hanging stack) {
        return alone.computeIfAbsent(stack, s -> {
            List<BruteBody> out = new ArrayList<>();
            for (int[] position : s.positions()) {
                BruteBody here = s.at(position);
                boolean clear = bodies.stream().allMatch(b -> here.clearOf(b, rooms, apart));
                for (Face wall : Face.values()) {
                    clear = clear && here.clearOf(wall, apart);
                }
                if (clear) {
                    out.add(here);
                }
            }
            return out;
        });
    }

    private boolean first(List<BruteRun.Hanging> stacks) {
        List<BruteBody> placed = new ArrayList<>();
        for (BruteRun.Hanging stack : stacks) {
            if (alone(stack).isEmpty()) {
                return false;
            }
            BruteBody here = alone(stack).get(0);
            if (!placed.stream().allMatch(other -> here.clearOf(other, rooms, apart))) {
                return false;
            }
            placed.add(here);
        }
        return true;
    }

    private boolean eachBodyAlone(BruteRun.Hanging stack) {
        List<BruteBody> all = stack.positions().stream().map(stack::at).toList();
        for (BruteBody body : bodies) {
            if (all.stream().noneMatch(here -> here.clearOf(body, rooms, apart))) {
                return false;
            }
        }
        for (Face wall : Face.values()) {
            if (all.stream().noneMatch(here -> here.clearOf(wall, apart))) {
                return false;
            }
        }
        return true;
    }

    private boolean pairs(List<BruteRun.Hanging> stacks, boolean clearOfTheRest) {
        for (int i = 0; i < stacks.size(); i++) {
            for (int j = 0; j < i; j++) {
                List<BruteBody> ones = places(stacks.get(i), clearOfTheRest);
                List<BruteBody> others = places(stacks.get(j), clearOfTheRest);
                if (ones.stream().noneMatch(a -> others.stream().anyMatch(b -> a.clearOf(b, rooms, apart)))) {
                    return false;
                }
            }
        }
        return true;
    }

    private List<BruteBody> places(BruteRun.Hanging stack, boolean clearOfTheRest) {
        return clearOfTheRest
                ? alone(stack)
                : stack.positions().stream().map(stack::at).toList();
    }
}
