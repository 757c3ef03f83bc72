package loopwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loopwright.fit.Scene.Option;

/** The layouts found so far, each with its needed mod sets; a layout is one number while the search runs. */
final class Found {

    private final FitCase fitCase;
    private final int base;
    private final Map<Long, List<ModSet>> needed = new HashMap<>();

    Found(FitCase fitCase) {
        this.fitCase = fitCase;
        this.base = fitCase.shapes().all().size() + 1;
    }

    /** Notes that a layout fits with a set, unless it already does with a part of that set. */
    void note(List<Option> chosen, ModSet mods) {
        List<ModSet> sets = needed.computeIfAbsent(code(chosen), c -> new ArrayList<>(1));
        for (ModSet smaller : sets) {
            if (smaller.isSubsetOf(mods)) {
                return;
            }
        }
        sets.add(mods);
    }

    int size() {
        return needed.size();
    }

    boolean has(List<Option> chosen) {
        return needed.containsKey(code(chosen));
    }

    private long code(List<Option> chosen) {
        long code = 0;
        int next = 0;
        for (int mount = 0; mount < fitCase.frames().size(); mount++) {
            int digit = 0;
            if (next < chosen.size() && chosen.get(next).mount() == mount) {
                digit = chosen.get(next).shape() + 1;
                next++;
            }
            code = Math.addExact(Math.multiplyExact(code, base), digit);
        }
        return code;
    }

    /** Layouts in no order, each with its sets in an order. */
    List<FoundLayout> all(Comparator<ModSet> order) {
        List<FoundLayout> out = new ArrayList<>(needed.size());
        needed.forEach((code, sets) -> {
            List<ModSet> sorted = new ArrayList<>(sets);
            if (sorted.size() > 1) {
                sorted.sort(order);
            }
            out.add(new FoundLayout(layout(code), sorted));
        });
        return out;
    }

    Layout layout(List<Option> chosen) {
        return layout(code(chosen));
    }

    private Layout layout(long code) {
        List<Layout.Stack> stacks = new ArrayList<>();
        long left = code;
        for (int mount = fitCase.frames().size() - 1; mount >= 0; mount--) {
            int digit = (int) (left % base);
            if (digit > 0) {
                stacks.add(
                        0,
                        new Layout.Stack(
                                fitCase.frames().get(mount),
                                fitCase.shapes().all().get(digit - 1)));
            }
            left /= base;
        }
        return new Layout(fitCase.chassis().id(), stacks);
    }
}
