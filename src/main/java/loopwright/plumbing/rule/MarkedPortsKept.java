package loopwright.plumbing.rule;

import java.util.List;
import java.util.stream.Stream;
import loopwright.catalog.basis.PartPort.Way;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;

/** Ports marked in or out are used so. */
final class MarkedPortsKept implements LoopRule {

    @Override
    public String id() {
        return "plumbing.marked-ports";
    }

    @Override
    public String statement() {
        return "coolant goes in and out where ports are marked so";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        List<String> wrong = plan.runs().stream()
                .flatMap(r ->
                        Stream.of(r.from().mayBeOut() ? "" : r.from().name(), r.to().mayBeIn() ? "" : r.to().name()))
                .filter(n -> !n.isEmpty())
                .toList();
        long marked = plan.parts().stream()
                .flatMap(p -> p.ports().stream())
                .filter(p -> p.way() != Way.EITHER)
                .count();
        return List.of(
                wrong.isEmpty()
                        ? new Finding(
                                id(),
                                Section.RUNS,
                                Verdict.OK,
                                marked + " ports are marked in or out; all that are used are used so.")
                        : new Finding(
                                id(),
                                Section.RUNS,
                                Verdict.BROKEN,
                                "Against their marks: " + String.join(", ", wrong) + "."));
    }
}
