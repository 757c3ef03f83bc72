package loopwright.oracle.brute;

import static loopwright.oracle.brute.BruteChoices.mW;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
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

/** Which rules of electrics a choice of parts breaks; loads in mW. */
final class BruteElectric {
    private static final BigDecimal VOLTS = BigDecimal.valueOf(12);

    private final Catalog catalog;
    private final PracticeElectric usual;
    private final int headroomPercent;
    private final Fault fault;
    private final List<Drive> drives = new ArrayList<>();

    BruteElectric(Catalog catalog, Brief brief, Fault fault) {
        this.catalog = catalog;
        this.usual = catalog.practice().plannedElectric();
        this.headroomPercent = brief.terms().supplyHeadroomPercent();
        this.fault = fault;
        brief.parts().drives().forEach(id -> drives.add(catalog.part(Drive.class, id)));
    }

    /** What asks for electricity. */
    record Asking(Board board, Processor processor, GraphicsCard card, Pump pump) {}

    /** The broken rules by name. */
    SortedSet<String> broken(Asking all, Supply supply) {
        SortedSet<String> out = new TreeSet<>();
        plugs(all, supply, out);
        watts(all, supply, out);
        out.remove(fault.ruleLeftOut());
        return out;
    }

    private static void ask(boolean kept, String rule, SortedSet<String> out) {
        if (!kept) {
            out.add("electric." + rule);
        }
    }

    private void plugs(Asking all, Supply supply, SortedSet<String> out) {
        Supply.Output has = supply.output();
        int processor = all.processor().heat().processorPlugs();
        GraphicsCard.Power card = all.card().power();
        int six = all.card().electric().map(GraphicsCard.Electric::sixPinPlugs).orElse(0);
        int eight = card.eightPinPlugs() + (fault == Fault.SIX_PIN_FORGOTTEN ? 0 : six);
        ask(has.processorPlugs() >= processor, "processor-plugs", out);
        ask(all.board().electric().processorPlugs() >= processor, "board-processor-plugs", out);
        ask(has.cardEightPinPlugs() >= eight && has.cardSixteenPinPlugs() >= card.sixteenPinPlugs(), "card-plugs", out);
        ask(isCoded(all.card(), supply), "card-coding", out);
        ask(hasCables(all.card(), supply), "card-cables", out);
        long wired = drives.stream().filter(d -> d.form() != Drive.DriveForm.M2).count();
        ask(has.sataPlugs() >= wired, "drive-plugs", out);
    }

    private static boolean isCoded(GraphicsCard card, Supply supply) {
        if (card.power().sixteenPinPlugs() == 0
                || card.electric().isEmpty()
                || supply.rails().isEmpty()) {
            return true;
        }
        int wants = card.electric().get().sixteenPinW().orElse(0);
        return supply.rails().get().sixteenPinW().orElse(wants) >= wants;
    }

    private boolean hasCables(GraphicsCard card, Supply supply) {
        boolean own = mW(card.power().worstW()) > mW(usual.plugs().cardOwnCableW());
        if (supply.cables().isEmpty() || (!own && fault != Fault.CABLES_OF_SMALL_CARDS)) {
            return true;
        }
        int wants = card.power().eightPinPlugs();
        if (fault == Fault.SIX_PIN_WANTS_A_CABLE) {
            wants += card.electric().map(GraphicsCard.Electric::sixPinPlugs).orElse(0);
        }
        int has = 0;
        for (Supply.Cable cable : supply.cables()) {
            if (cable.plug() == Plug.CARD_8) {
                has += fault == Fault.CABLES_BY_PLUGS ? cable.plugs() : 1;
            }
        }
        return has >= wants;
    }

    private long wholeMW(Asking all) {
        long sum = mW(all.processor().heat().worstW())
                + mW(all.card().power().worstW())
                + mW(all.board().electric().heatW())
                + mW(all.pump().electric().powerW())
                + mW(catalog.practice().heat().miscHeatW());
        for (Drive drive : drives) {
            sum += mW(drive.heatW());
        }
        return sum;
    }

    private long lowMW() {
        long low = Math.min(
                mW(usual.draw().miscLowW()), mW(catalog.practice().heat().miscHeatW()));
        for (Drive drive : drives) {
            long says = drive.electric().map(e -> mW(e.lowW())).orElse(0L);
            low += fault == Fault.LOW_OVER_HEAT ? says : Math.min(says, mW(drive.heatW()));
        }
        return low;
    }

    private void watts(Asking all, Supply supply, SortedSet<String> out) {
        long rated = mW(supply.output().ratedW());
        long whole = wholeMW(all);
        ask(rated * 100 >= (100 + headroomPercent) * whole, "load", out);
        if (supply.rails().isEmpty()) {
            return;
        }
        Supply.Rails rails = supply.rails().get();
        long high = whole - lowMW();
        long brings = twelveVoltMW(rails.twelveVoltA());
        ask(
                switch (fault) {
                    case TWELVE_VOLT_OFF_BY_ONE -> brings > high;
                    case TWELVE_VOLT_HEADROOM -> brings * 100 >= (100 + headroomPercent) * high;
                    default -> brings >= high;
                },
                "twelve-volt",
                out);
        ask(mW(rails.lowW()) >= lowMW(), "low-rails", out);
        if (rails.surgePercent().isPresent()) {
            ask(rated * rails.surgePercent().get() >= surge(all, whole), "surge", out);
        } else {
            ask(rated >= whole + mW(usual.draw().oldSupplyReserveW()), "surge-reserve", out);
        }
    }

    private long twelveVoltMW(double amperes) {
        BigDecimal a = BigDecimal.valueOf(amperes);
        if (fault == Fault.MILLIAMPERES_FIRST) {
            a = a.setScale(3, RoundingMode.HALF_UP);
        }
        return a.multiply(VOLTS)
                .movePointRight(3)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    /** Milliwatts in hundredths. */
    private long surge(Asking all, long whole) {
        long card = mW(all.card().power().worstW());
        long processor = mW(all.processor().heat().worstW());
        int burst = all.card()
                .electric()
                .flatMap(GraphicsCard.Electric::burstPercent)
                .orElse(usual.draw().cardBurstPercent());
        long peak = all.processor()
                .electric()
                .filter(e -> fault != Fault.OWN_PEAK_IGNORED)
                .map(e -> mW(e.peakW()) * 100)
                .orElse(processor * usual.draw().processorPeakPercent());
        return card * burst + peak + 100 * (whole - card - processor);
    }
}
