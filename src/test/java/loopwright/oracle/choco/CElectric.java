package loopwright.oracle.choco;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.ToLongFunction;
import loopwright.catalog.Catalog;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.PracticeElectric;

/** Whether a supply feeds what a choice of parts asks of it. */
record CElectric(Catalog catalog, Brief brief, List<Drive> drives) {

    private static final long HUNDRED = 100;

    boolean feeds(Supply s, Board board, Processor processor, GraphicsCard card, Pump pump) {
        boolean boardFeeds =
                board.electric().processorPlugs() >= processor.heat().processorPlugs();
        return boardFeeds && plugs(s, processor, card) && watts(s, board, processor, card, pump);
    }

    private boolean plugs(Supply s, Processor processor, GraphicsCard card) {
        Supply.Output out = s.output();
        long sata = drives.stream().filter(d -> d.form() != Drive.DriveForm.M2).count();
        int eight = card.power().eightPinPlugs();
        int parted = card.electric().isPresent() ? card.electric().get().sixPinPlugs() : 0;
        if (out.processorPlugs() < processor.heat().processorPlugs()
                || out.sataPlugs() < sata
                || out.cardEightPinPlugs() - parted < eight
                || out.cardSixteenPinPlugs() < card.power().sixteenPinPlugs()) {
            return false;
        }
        if (card.power().sixteenPinPlugs() > 0) {
            int asked =
                    card.electric().flatMap(GraphicsCard.Electric::sixteenPinW).orElse(Integer.MIN_VALUE);
            int coded = s.rails().flatMap(Supply.Rails::sixteenPinW).orElse(Integer.MAX_VALUE);
            if (coded < asked) {
                return false;
            }
        }
        boolean small = milli(card.power().worstW()) <= milli(usual().plugs().cardOwnCableW());
        long cables =
                s.cables().stream().filter(c -> c.plug().equals(Plug.CARD_8)).count();
        return small || s.cables().isEmpty() || cables >= eight;
    }

    private boolean watts(Supply s, Board board, Processor processor, GraphicsCard card, Pump pump) {
        PracticeElectric.Draw draw = usual().draw();
        double misc = catalog.practice().heat().miscHeatW();
        long others = milli(misc)
                + sum(d -> milli(d.heatW()))
                + milli(board.electric().heatW())
                + milli(pump.electric().powerW());
        long cpu = milli(processor.heat().worstW());
        long gpu = milli(card.power().worstW());
        long load = others + cpu + gpu;
        long rated = milli(s.output().ratedW());
        if (HUNDRED * rated < (HUNDRED + brief.terms().supplyHeadroomPercent()) * load) {
            return false;
        }
        if (s.rails().isEmpty()) {
            return true;
        }
        Supply.Rails rails = s.rails().get();
        long low = milli(Math.min(draw.miscLowW(), misc))
                + sum(d -> d.electric().isEmpty()
                        ? 0
                        : milli(Math.min(d.electric().get().lowW(), d.heatW())));
        BigDecimal volts12 = new BigDecimal(Double.toString(rails.twelveVoltA())).multiply(new BigDecimal(12_000));
        if (volts12.setScale(0, RoundingMode.HALF_UP).longValue() < load - low || milli(rails.lowW()) < low) {
            return false;
        }
        if (rails.surgePercent().isEmpty()) {
            return rated - milli(draw.oldSupplyReserveW()) >= load;
        }
        int burst = card.electric().flatMap(GraphicsCard.Electric::burstPercent).orElse(draw.cardBurstPercent());
        long peak = processor.electric().isPresent()
                ? HUNDRED * milli(processor.electric().get().peakW())
                : cpu * draw.processorPeakPercent();
        return rated * rails.surgePercent().get() >= gpu * burst + peak + HUNDRED * others;
    }

    private PracticeElectric usual() {
        return catalog.practice().plannedElectric();
    }

    private long sum(ToLongFunction<Drive> each) {
        return drives.stream().mapToLong(each).sum();
    }

    private static long milli(double watts) {
        return new BigDecimal(Double.toString(watts))
                .multiply(BigDecimal.valueOf(1000))
                .setScale(0, RoundingMode.HALF_UP)
                .longValue();
    }
}
