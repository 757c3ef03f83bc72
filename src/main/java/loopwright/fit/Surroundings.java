package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.fit.Growing.Form;
import loopwright.fit.PairTable.Link;
import loopwright.fit.PairTable.Status;

/**
 * Everything in a layout but one body: what does not slide, and the stacks with the ranges they may slide in.
 *
 * <p>Unit: hundredths of a millimetre.
 */
final class Surroundings {

    private final SceneMaker maker;
    private final List<Integer> still;
    private final List<List<Hang>> stacks;
    private final List<Row> rows;

    /** Each stack in one of its ranges, and what these still ask of each other and of what does not slide. */
    private record Row(List<Hang> hangs, List<int[]> open) {}

    /** The body and the stacks where they can stand together. */
    record Stand(Standing body, List<Standing> stacks) {}

    /**
     * Surroundings.
     *
     * @param still numbers of what does not slide, none of which clash
     * @param stacks for each stack the hangs it may have, one a range
     */
    Surroundings(SceneMaker maker, List<Integer> still, List<List<Hang>> stacks) {
        this.maker = maker;
        this.still = List.copyOf(still);
        this.stacks = List.copyOf(stacks);
        this.rows = new ArrayList<>();
        addRows(List.of(), List.of());
    }

    private void addRows(List<Hang> picked, List<int[]> open) {
        if (picked.size() == stacks.size()) {
            rows.add(new Row(picked, open));
            return;
        }
        for (Hang hang : stacks.get(picked.size())) {
            List<Link> links = new ArrayList<>();
            links.add(maker.pairs().walls(hang));
            still.forEach(b -> links.add(maker.pairs().link(hang, b)));
            picked.forEach(other -> links.add(maker.pairs().link(other, hang)));
            if (links.stream().noneMatch(l -> l.status() == Status.NEVER)) {
                List<Hang> more = new ArrayList<>(picked);
                more.add(hang);
                List<int[]> asked = new ArrayList<>(open);
                links.forEach(l -> asked.addAll(l.open()));
                addRows(List.copyOf(more), asked);
            }
        }
    }

    /** How many bodies do not slide. */
    int stillBodies() {
        return still.size();
    }

    /** How many stacks there are. */
    int stackCount() {
        return stacks.size();
    }

    /** One of the bodies that do not slide. */
    Standing stillBody(int index) {
        return Standing.still(maker.bodies().get(still.get(index)));
    }

    /** A stack at the start of its first range. */
    Standing stack(int index) {
        Hang first = stacks.get(index).get(0);
        return Standing.at(
                first, first.range().along().min(), first.range().aside().min());
    }

    /** The same without one of the bodies that do not slide. */
    Surroundings withoutStill(int index) {
        List<Integer> left = new ArrayList<>(still);
        left.remove(index);
        return new Surroundings(maker, left, stacks);
    }

    /** The same without one of the stacks. */
    Surroundings withoutStack(int index) {
        List<List<Hang>> left = new ArrayList<>(stacks);
        left.remove(index);
        return new Surroundings(maker, still, left);
    }

    /** The same without the stack on a mount, if there is one. */
    Surroundings withoutMount(MountFrame frame) {
        for (int i = 0; i < stacks.size(); i++) {
            if (stacks.get(i).get(0).frame().index() == frame.index()) {
                return withoutStack(i);
            }
        }
        return this;
    }

    /** Whether a body in one of these forms can stand with everything here. */
    boolean admit(List<Form> forms) {
        return forms.stream()
                .anyMatch(form -> rows.stream()
                        .anyMatch(row ->
                                positions(row, form).filter(p -> p.feasible(0)).isPresent()));
    }

    /** How they stand, each as near the datum as can be; empty where they cannot. */
    Optional<Stand> stand(List<Form> forms) {
        for (Form form : forms) {
            for (Row row : rows) {
                Optional<int[]> least = positions(row, form).flatMap(p -> p.least(0));
                if (least.isPresent()) {
                    int[] at = least.get();
                    return Optional.of(new Stand(
                            form.hang().map(h -> standing(h, at)).orElseGet(() -> Standing.still(form.occupant())),
                            row.hangs().stream().map(h -> standing(h, at)).toList()));
                }
            }
        }
        return Optional.empty();
    }

    private static Standing standing(Hang hang, int[] at) {
        int along = 2 * hang.frame().index();
        return Standing.at(hang, at[along], at[along + 1]);
    }

    /** The question where all can stand; empty where it is no question, because bodies that do not slide clash. */
    private Optional<Positions> positions(Row row, Form form) {
        PairTable pairs = maker.pairs();
        List<int[]> asked = new ArrayList<>(row.open());
        List<Hang> hangs = new ArrayList<>(row.hangs());
        if (form.hang().isPresent()) {
            Hang growing = form.hang().get();
            asked.addAll(pairs.wallSides(growing, pairs.strictness()));
            still.forEach(b -> asked.addAll(pairs.sides(growing, b, pairs.strictness())));
            row.hangs().forEach(h -> asked.addAll(pairs.sides(growing, h, pairs.strictness())));
            hangs.add(growing);
        } else if (clashes(form.occupant())) {
            return Optional.empty();
        } else {
            row.hangs().forEach(h -> asked.addAll(pairs.sides(h, form.occupant())));
        }
        return Optional.of(new Positions(pairs.domains(hangs), asked));
    }

    private boolean clashes(Occupant body) {
        return maker.pairs().wallMargin(body) < 0
                || still.stream()
                        .anyMatch(b -> maker.pairs().margin(body, maker.bodies().get(b)) < 0);
    }
}
