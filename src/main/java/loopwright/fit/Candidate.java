package loopwright.fit;

import java.util.List;
import java.util.Optional;
import loopwright.fit.conflict.FactSet;
import loopwright.fit.rules.Chosen;

/**
 * One way to try for wishes: mods, parts in places, stacks; and what it breaks at its best.
 *
 * @param broken facts and wishes that it breaks
 * @param builtIn numbers of the built-in bodies
 */
public record Candidate(
        FactSet broken, ModSet mods, List<Integer> builtIn, PlacedFacts.Placed placed, List<HangFacts.Option> stacks) {

    /** Copies. */
    public Candidate {
        stacks = List.copyOf(stacks);
    }

    /** Its parts; of those that take the same room the first. */
    public Chosen parts() {
        return placed.set().example();
    }

    /** Its stacks, hanging or not, in the chassis's order of mounts. */
    public List<Shape> shapes() {
        return stacks.stream().map(HangFacts.Option::shape).toList();
    }

    /** The stacks that hang somewhere. */
    List<Hang> hangs() {
        return stacks.stream()
                .map(HangFacts.Option::hang)
                .flatMap(Optional::stream)
                .toList();
    }

    /** The shape on a mount, if there is one. */
    public Optional<Shape> shapeAt(MountFrame frame) {
        return stacks.stream()
                .filter(s -> s.mount() == frame.index())
                .map(HangFacts.Option::shape)
                .findFirst();
    }
}
