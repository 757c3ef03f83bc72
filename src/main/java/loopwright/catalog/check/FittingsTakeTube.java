package loopwright.catalog.check;

import java.util.List;
import java.util.Map;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Tube;
import loopwright.catalog.part.TubeFitting;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;

/** Where a brief says which fittings, one of them takes each tube that it allows. */
record FittingsTakeTube(Item item, Map<String, Part> parts, Problems problems) {

    void check(Brief brief) {
        brief.loop().fittings().map(Choice::anyOf).filter(any -> !any.isEmpty()).ifPresent(any -> {
            List<TubeFitting> allowed = of(TubeFitting.class, any);
            for (Tube tube : of(Tube.class, brief.loop().tube().anyOf())) {
                if (allowed.size() == any.size() && allowed.stream().noneMatch(f -> f.takes(tube))) {
                    problems.add(item.problem(
                            "loop.fittings.any_of",
                            "none that takes " + tube.id(),
                            "a straight fitting for that tube's bore and outside",
                            "Name one, or leave fittings out."));
                }
            }
        });
    }

    private <P extends Part> List<P> of(Class<P> kind, List<String> ids) {
        return ids.stream()
                .map(parts::get)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }
}
