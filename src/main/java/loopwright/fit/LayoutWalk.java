package loopwright.fit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loopwright.fit.PairTable.Link;
import loopwright.fit.PairTable.Status;
import loopwright.fit.Scene.Hung;
import loopwright.fit.Scene.Option;
import loopwright.fit.Scene.Setting;

/**
 * Walks every layout of a scene, mount by mount, leaving out what cannot stand.
 *
 * <p>Taking a stack away never makes a layout clash, so a partial layout that does not fit is not extended.
 */
final class LayoutWalk {

    /** What is done with each layout that fits; answers whether to go on. */
    interface Visit {
        boolean fits(List<Option> chosen);
    }

    private final PairTable pairs;
    private final Scene scene;
    private final List<Fresh.Choice> choices;
    private final Map<Long, Boolean> neverTogether = new HashMap<>();

    /**
     * A walk.
     *
     * @param choices what each mount may carry, mount by mount: options of the scene
     */
    LayoutWalk(PairTable pairs, Scene scene, List<Fresh.Choice> choices) {
        this.pairs = pairs;
        this.scene = scene;
        this.choices = choices;
    }

    /** Visits every layout that fits; false when the visit stopped it. */
    boolean run(Visit visit) {
        BitSet all = new BitSet();
        all.set(0, scene.settings().size());
        return extend(0, List.of(), all, 0, visit);
    }

    /** Goes on from a partial layout; {@code hint} is a setting in which it stands, tried first for what is added. */
    private boolean extend(int mount, List<Option> chosen, BitSet settings, int hint, Visit visit) {
        if (mount == choices.size()) {
            return chosen.isEmpty() || visit.fits(chosen);
        }
        if (choices.get(mount).mayBeEmpty() && !extend(mount + 1, chosen, settings, hint, visit)) {
            return false;
        }
        for (Option option : choices.get(mount).options()) {
            BitSet left = (BitSet) settings.clone();
            left.and(option.settings());
            if (left.isEmpty() || clash(chosen, option)) {
                continue;
            }
            List<Option> more = new ArrayList<>(chosen);
            more.add(option);
            int setting = standingIn(more, left, hint);
            if (setting < 0) {
                continue;
            }
            if (!extend(mount + 1, more, left, setting, visit)) {
                return false;
            }
        }
        return true;
    }

    private boolean clash(List<Option> chosen, Option option) {
        for (Option other : chosen) {
            if (neverTogether(other, option)) {
                return true;
            }
        }
        return false;
    }

    private boolean neverTogether(Option a, Option b) {
        if (a.hung().size() == 1 && b.hung().size() == 1) {
            return pairs.link(a.hung().get(0).hang(), b.hung().get(0).hang()).status() == Status.NEVER;
        }
        long key = ((long) a.mount() << 24 | a.shape()) << 32 | (long) b.mount() << 24 | b.shape();
        return neverTogether.computeIfAbsent(
                key,
                k -> a.hung().stream()
                        .allMatch(x -> b.hung().stream()
                                .allMatch(y -> pairs.link(x.hang(), y.hang()).status() == Status.NEVER)));
    }

    /** Whether these stacks can all stand in one of some settings. */
    boolean stands(List<Option> chosen, BitSet settings) {
        return standingIn(chosen, settings, 0) >= 0;
    }

    /** A setting in which these stacks can all stand, or −1; {@code hint} is tried first. */
    private int standingIn(List<Option> chosen, BitSet settings, int hint) {
        int anyway = standingAnyway(chosen, settings);
        if (anyway >= 0) {
            return anyway;
        }
        if (settings.get(hint) && stands(chosen, scene.settings().get(hint), new ArrayList<>())) {
            return hint;
        }
        for (int i = settings.nextSetBit(0); i >= 0; i = settings.nextSetBit(i + 1)) {
            if (i != hint && stands(chosen, scene.settings().get(i), new ArrayList<>())) {
                return i;
            }
        }
        return -1;
    }

    /** Where single pairs already say so: a setting in which every stack is free, if no stacks can meet; else −1. */
    private int standingAnyway(List<Option> chosen, BitSet settings) {
        BitSet free = (BitSet) settings.clone();
        for (int i = 0; i < chosen.size(); i++) {
            free.and(chosen.get(i).free());
            for (int j = 0; j < i && !free.isEmpty(); j++) {
                if (!alwaysApart(chosen.get(j), chosen.get(i))) {
                    return -1;
                }
            }
        }
        return free.nextSetBit(0);
    }

    private boolean alwaysApart(Option a, Option b) {
        return a.onlyHang().isPresent()
                && b.onlyHang().isPresent()
                && pairs.link(a.onlyHang().get(), b.onlyHang().get()).status() == Status.ALWAYS;
    }

    private boolean stands(List<Option> chosen, Setting setting, List<Hung> picked) {
        if (picked.size() == chosen.size()) {
            List<int[]> open = open(picked, setting);
            return open.isEmpty() || new Positions(pairs.domains(hangs(picked)), open).feasible(0);
        }
        for (Hung hung : chosen.get(picked.size()).hung()) {
            if (meets(hung, setting, picked)) {
                continue;
            }
            picked.add(hung);
            if (stands(chosen, setting, picked)) {
                return true;
            }
            picked.remove(picked.size() - 1);
        }
        return false;
    }

    private boolean meets(Hung hung, Setting setting, List<Hung> picked) {
        for (int body : setting.bodies()) {
            if (pairs.link(hung.hang(), body).status() == Status.NEVER) {
                return true;
            }
        }
        for (Hung other : picked) {
            if (pairs.link(other.hang(), hung.hang()).status() == Status.NEVER) {
                return true;
            }
        }
        return false;
    }

    private List<int[]> open(List<Hung> picked, Setting setting) {
        List<int[]> open = new ArrayList<>();
        for (int i = 0; i < picked.size(); i++) {
            open.addAll(picked.get(i).open());
            for (int body : setting.bodies()) {
                open.addAll(pairs.link(picked.get(i).hang(), body).open());
            }
            for (int j = 0; j < i; j++) {
                Link link = pairs.link(picked.get(j).hang(), picked.get(i).hang());
                open.addAll(link.open());
            }
        }
        return open;
    }

    private static List<Hang> hangs(List<Hung> picked) {
        return picked.stream().map(Hung::hang).toList();
    }
}
