package loopwright.catalog.check;

import loopwright.catalog.part.Processor;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.Practice;

/** A processor's plugs carry its peak by what the practice plans for one; its peak is no less than its worst. */
final class ProcessorPlugsCarryPeak implements Check {

    @Override
    public void run(Items items, Problems problems) {
        items.findOnly(Practice.class).ifPresent(practice -> {
            double plugW = practice.plannedElectric().plugs().processorPlugW();
            items.of(Processor.class).forEach(p -> check(p, plugW, problems));
        });
    }

    private static void check(Items.Placed<Processor> processor, double plugW, Problems problems) {
        Processor.Heat heat = processor.value().heat();
        double mostW = plugW * heat.processorPlugs();
        double peakW =
                processor.value().electric().map(Processor.Electric::peakW).orElse(heat.worstW());
        String path = processor.value().electric().isPresent() ? "electric.peak_W" : "heat.worst_W";
        if (!(peakW <= mostW)) {
            problems.add(processor
                    .item()
                    .problem(
                            path,
                            Curve.plain(peakW),
                            "at most " + Curve.plain(mostW) + " W through " + heat.processorPlugs()
                                    + (heat.processorPlugs() == 1 ? " processor plug" : " processor plugs"),
                            "Is a plug missing?"));
        }
        if (!(peakW >= heat.worstW())) {
            problems.add(processor
                    .item()
                    .problem(path, Curve.plain(peakW), "at least its worst, " + Curve.plain(heat.worstW()) + " W", ""));
        }
    }
}
