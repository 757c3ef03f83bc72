package loopwright.oracle.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Supply;
import loopwright.oracle.cases.CaseElectric.CaseLoad;
import loopwright.oracle.cases.CaseElectric.Hot;

/** A supply that brings just enough, or just too little, of one thing. */
final class CaseSupply {
    private static final double MW_PER_W = 1000;
    private static final double MW_PER_A = 12_000;
    private static final int PLENTY_MW = 60_000;

    /** What a supply is rated for over the whole load, so that headroom of 20 % is no question. */
    private static final double ROOMY = 1.25;

    private final SplittableRandom random;
    private final Hot hot;
    private final CaseLoad load;

    CaseSupply(SplittableRandom random, Hot hot, CaseLoad load) {
        this.random = random;
        this.hot = hot;
        this.load = load;
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T oneOf(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    /** Nothing or one more than asked, or one less. */
    private int near(Hot what, int plenty) {
        return hot == what ? oneOf(List.of(-1, -1, 0, 1)) : plenty;
    }

    Supply of(Supply s) {
        boolean railed = chance(40)
                || hot == Hot.TWELVE_VOLT
                || hot == Hot.LOW_RAILS
                || hot == Hot.SURGE
                || hot == Hot.SURGE_RESERVE
                || hot == Hot.CODING;
        Supply.Output was = s.output();
        double rated = was.ratedW();
        Optional<Integer> surge = Optional.empty();
        if (railed && hot != Hot.SURGE_RESERVE && (hot == Hot.SURGE || chance(70))) {
            double most = load.surge() / (ROOMY * load.wholeMW());
            int percent = Math.max(100, (int) most - random.nextInt(5));
            surge = Optional.of(percent);
            long least = (load.surge() + percent - 1) / percent;
            rated = hot == Hot.SURGE ? (least + near(Hot.SURGE, 0)) / MW_PER_W : rated;
        } else if (hot == Hot.SURGE_RESERVE) {
            rated = (load.wholeMW() + load.reserveMW() + near(Hot.SURGE_RESERVE, 0)) / MW_PER_W;
        }
        Supply.Output output = new Supply.Output(
                rated,
                load.processorPlugs() + Math.min(0, near(Hot.PROCESSOR_PLUGS, 0)),
                load.eightPin() + near(Hot.CARD_PLUGS, 0),
                load.sixteenPin(),
                was.sataPlugs(),
                was.noiseMaxDBA(),
                was.efficiency());
        return new Supply(
                s.id(),
                s.title(),
                s.variantOf(),
                s.buy(),
                s.form(),
                s.body(),
                s.plugRoomMm(),
                output,
                railed ? Optional.of(rails(surge)) : Optional.empty(),
                hot == Hot.CABLES || chance(15) ? cables() : List.of(),
                s.noise(),
                s.massG());
    }

    private Supply.Rails rails(Optional<Integer> surge) {
        long high = load.wholeMW() - load.lowMW();
        double amperes = (high + near(Hot.TWELVE_VOLT, PLENTY_MW)) / MW_PER_A;
        double low = (load.lowMW() + near(Hot.LOW_RAILS, PLENTY_MW)) / MW_PER_W;
        Optional<Integer> coded =
                hot == Hot.CODING ? Optional.of(oneOf(List.of(299, 299, 300, 450))) : Optional.of(300);
        return new Supply.Rails(
                amperes, Math.max(0, low), surge, chance(hot == Hot.CODING ? 10 : 60) ? Optional.empty() : coded);
    }

    /** Two cables, or two plugs on one, and such as are for something else. */
    private List<Supply.Cable> cables() {
        List<Supply.Cable> out = new ArrayList<>();
        out.add(cable(Plug.SATA, 3));
        out.add(cable(Plug.CARD_8, chance(60) ? 2 : 1));
        if (hot != Hot.CABLES || chance(50)) {
            out.add(cable(Plug.CARD_8, chance(30) ? 2 : 1));
        }
        if (chance(30)) {
            out.add(cable(oneOf(List.of(Plug.CARD_6, Plug.PROCESSOR_8)), 2));
        }
        return out;
    }

    private static Supply.Cable cable(Plug plug, int plugs) {
        return new Supply.Cable(plug, plugs, 500, plugs > 1 ? Optional.of(100.0) : Optional.empty(), false);
    }
}
