package loopwright.oracle.rank;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.DoubleStream;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Supply;
import loopwright.loop.SoundPower;
import loopwright.oracle.OracleCase;

/** How loud a supply's own fan is under the worst loads. */
final class BruteSupplySound {

    private BruteSupplySound() {}

    /** Sound power, millionths. */
    static long millionths(OracleCase question, List<Part> parts, RankFault fault) {
        if (fault == RankFault.SUPPLIES_ARE_SILENT) {
            return 0;
        }
        Supply supply = BruteCore.only(Supply.class, parts);
        double percent = 100 * loadW(question, parts) / supply.output().ratedW();
        return SoundPower.ofDBA(levelDBA(supply, percent, fault)).millionths();
    }

    private static double loadW(OracleCase question, List<Part> parts) {
        DoubleStream chosen = DoubleStream.of(
                BruteCore.only(Processor.class, parts).heat().worstW(),
                BruteCore.only(GraphicsCard.class, parts).power().worstW(),
                BruteCore.only(Board.class, parts).electric().heatW(),
                BruteCore.only(Pump.class, parts).electric().powerW(),
                question.catalog().practice().heat().miscHeatW());
        DoubleStream drives = question.brief().parts().drives().stream()
                .mapToDouble(id -> question.catalog().part(Drive.class, id).heatW());
        BigDecimal sum = DoubleStream.concat(chosen, drives)
                .mapToObj(w -> BigDecimal.valueOf(w).setScale(3, RoundingMode.HALF_UP))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return sum.doubleValue();
    }

    private static double levelDBA(Supply supply, double percent, RankFault fault) {
        List<Supply.NoisePoint> points = supply.noise();
        if (points.isEmpty() || fault == RankFault.SUPPLIES_AT_FULL_LOAD) {
            return supply.output().noiseMaxDBA();
        }
        Supply.NoisePoint before = points.get(0);
        for (Supply.NoisePoint point : points) {
            if (percent < point.loadPercent()) {
                double span = point.loadPercent() - before.loadPercent();
                double share = span == 0 ? 0 : (percent - before.loadPercent()) / span;
                if (fault == RankFault.NEAREST_NOISE_POINT) {
                    share = Math.rint(share);
                }
                return before.noiseDBA() + share * (point.noiseDBA() - before.noiseDBA());
            }
            before = point;
        }
        return before.noiseDBA();
    }
}
