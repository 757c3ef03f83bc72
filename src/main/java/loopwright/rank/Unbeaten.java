package loopwright.rank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/** Keeps the builds that no other beats in price and temperature; of equal ones the smallest key, and how many. */
final class Unbeaten implements Goal {

    /**
     * A build, and those equal to it in price and temperature.
     *
     * @param alike what each is but for its duty: builds that differ in duty only count as one
     */
    record Kept(Build build, Set<String> alike) {
        int equal() {
            return alike.size();
        }
    }

    private final List<Kept> kept = new ArrayList<>();
    private final List<Build.Outcome> scouted;

    /** Keeps from scratch. */
    Unbeaten() {
        this.scouted = List.of();
    }

    /** Keeps from scratch, but gives up what a first look has already beaten. */
    Unbeaten(Unbeaten scout) {
        this.scouted = scout.kept.stream().map(k -> k.build().outcome()).toList();
    }

    @Override
    public boolean isHopeless(String parts, Bound bound) {
        for (Kept one : kept) {
            if (beats(one.build().outcome(), bound)) {
                return true;
            }
        }
        for (Build.Outcome one : scouted) {
            if (beats(one, bound)) {
                return true;
            }
        }
        return false;
    }

    private static boolean beats(Build.Outcome has, Bound bound) {
        return has.priceCents() <= bound.priceCents()
                && has.coolantOverRoomCentiK() <= bound.coolantOverRoomCentiK()
                && (has.priceCents() < bound.priceCents()
                        || has.coolantOverRoomCentiK() < bound.coolantOverRoomCentiK());
    }

    @Override
    public boolean wantsEveryDuty() {
        return false;
    }

    @Override
    public void offer(String parts, Build.Outcome outcome, Supplier<Build> build) {
        for (int i = 0; i < kept.size(); i++) {
            Build.Outcome has = kept.get(i).build().outcome();
            if (has.beats(outcome)) {
                return;
            }
            if (has.ties(outcome)) {
                kept.set(i, equal(kept.get(i), build.get()));
                return;
            }
        }
        kept.removeIf(k -> outcome.beats(k.build().outcome()));
        Build only = build.get();
        kept.add(new Kept(only, new HashSet<>(List.of(only.butForDuty()))));
    }

    private static Kept equal(Kept old, Build other) {
        boolean sameButForDuty = other.butForDuty().equals(old.build().butForDuty());
        boolean better = sameButForDuty
                ? other.dutyPercent() > old.build().dutyPercent()
                : other.key().compareTo(old.build().key()) < 0;
        old.alike().add(other.butForDuty());
        return new Kept(better ? other : old.build(), old.alike());
    }

    /** What is kept, dearest (coolest) first. */
    List<Kept> dearestFirst() {
        List<Kept> out = new ArrayList<>(kept);
        out.sort(Comparator.comparingLong((Kept k) -> k.build().outcome().priceCents())
                .reversed());
        return out;
    }
}
