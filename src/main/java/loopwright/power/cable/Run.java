package loopwright.power.cable;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.part.Supply;

/**
 * A cable with what its plugs feed, in order: the nearest to the supply first, then always the nearest of those left.
 *
 * <p>Plugs may be left hanging: where the next is too far for one length between plugs, the one after it may reach. When
 * they do not all reach so, each takes the next plug, and what each link lacks is told. Unit: whole millimetres.
 *
 * @param links one a plug that is used
 * @param overMm what is left over of the cable in all, plugs that hang behind the last counted
 */
public record Run(List<Link> links, int overMm) {

    /**
     * A plug that is used.
     *
     * @param want number of what it feeds
     * @param wantedMm length that is wanted for this link
     * @param hasMm length that there is
     */
    public record Link(int want, int wantedMm, int hasMm) {
        /** What it lacks; 0 where it reaches. */
        public int lacksMm() {
            return Math.max(0, wantedMm - hasMm);
        }
    }

    /** Copies. */
    public Run {
        links = List.copyOf(links);
    }

    /** What its links lack in all. */
    public int lacksMm() {
        return links.stream().mapToInt(Link::lacksMm).sum();
    }

    /** How many of its links do not reach. */
    public int shortLinks() {
        return (int) links.stream().filter(l -> l.lacksMm() > 0).count();
    }

    /**
     * A cable that feeds some of what is wanted.
     *
     * @param fed their numbers, no more than the cable has plugs
     */
    static Run of(Supply.Cable cable, Wants wants, List<Integer> fed) {
        if (fed.size() > cable.plugs()) {
            throw new IllegalArgumentException("a cable with " + cable.plugs() + " plugs cannot feed " + fed.size());
        }
        List<Integer> order = order(wants, fed);
        int toNext = (int) Math.floor(cable.toNextMm().orElse(0.0));
        List<Link> skipping = links(cable, wants, order, toNext, true);
        int hanging = cable.plugs() - order.size() - skipped(skipping, cable, toNext);
        if (hanging >= 0 && skipping.stream().allMatch(l -> l.lacksMm() == 0)) {
            return new Run(skipping, over(skipping, hanging * toNext));
        }
        List<Link> plain = links(cable, wants, order, toNext, false);
        return new Run(plain, over(plain, (cable.plugs() - order.size()) * toNext));
    }

    private static List<Integer> order(Wants wants, List<Integer> fed) {
        List<Integer> left = new ArrayList<>(fed);
        List<Integer> out = new ArrayList<>();
        while (!left.isEmpty()) {
            Integer next = left.get(0);
            for (Integer each : left) {
                if (distance(wants, out, each) < distance(wants, out, next)) {
                    next = each;
                }
            }
            out.add(next);
            left.remove(next);
        }
        return out;
    }

    private static int distance(Wants wants, List<Integer> before, int want) {
        return before.isEmpty()
                ? wants.fromSupplyMm().get(want)
                : wants.betweenMm().get(before.get(before.size() - 1)).get(want);
    }

    private static List<Link> links(
            Supply.Cable cable, Wants wants, List<Integer> order, int toNext, boolean skippingPlugs) {
        List<Link> out = new ArrayList<>();
        List<Integer> before = new ArrayList<>();
        for (int want : order) {
            int wanted = distance(wants, before, want);
            int has = before.isEmpty() ? (int) Math.floor(cable.lengthMm()) : toNext;
            if (skippingPlugs && toNext > 0) {
                has += Math.max(0, (wanted - has + toNext - 1) / toNext) * toNext;
            }
            out.add(new Link(want, wanted, has));
            before.add(want);
        }
        return out;
    }

    private static int skipped(List<Link> links, Supply.Cable cable, int toNext) {
        if (toNext == 0) {
            return 0;
        }
        int spare = links.stream().mapToInt(Link::hasMm).sum()
                - (int) Math.floor(cable.lengthMm())
                - (links.size() - 1) * toNext;
        return spare / toNext;
    }

    private static int over(List<Link> links, int hangingMm) {
        return hangingMm
                + links.stream()
                        .mapToInt(l -> Math.max(0, l.hasMm() - l.wantedMm()))
                        .sum();
    }
}
