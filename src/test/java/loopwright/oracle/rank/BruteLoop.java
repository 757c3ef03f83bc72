package loopwright.oracle.rank;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Supply;
import loopwright.catalog.part.Tube;
import loopwright.catalog.standard.Practice;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.oracle.OracleCase;

/** The loop of a choice of parts, and the heat that stays in the case's air, W. */
record BruteLoop(Machine.Water water, double caseW) {

    static BruteLoop of(OracleCase question, List<Part> parts, Tube tube, Coolant coolant, RankFault fault) {
        Practice practice = question.catalog().practice();
        LoopWish.Run run = question.brief().loop().run().orElse(LoopWish.Run.USUAL);
        double share = fault == RankFault.BLOCKS_TAKE_ALL ? 1 : practice.heat().blockCaptureShare();
        Processor processor = BruteCore.only(Processor.class, parts);
        GraphicsCard card = BruteCore.only(GraphicsCard.class, parts);
        double air = practice.heat().miscHeatW()
                + BruteCore.only(Board.class, parts).electric().heatW();
        for (Drive drive : drives(question)) {
            air += drive.heatW();
        }
        List<Machine.BlockAt> blocks = new ArrayList<>();
        double worst = processor.heat().worstW();
        Block block = BruteCore.only(Block.class, parts);
        blocks.add(new Machine.BlockAt(Machine.PROCESSOR, processor.id(), block.flow(), share * worst));
        air += (1 - share) * worst;
        double cardW = card.power().worstW();
        if (card.cooling() == GraphicsCard.Cooling.BLOCK) {
            Block.Flow flow = card.power().block().orElseThrow();
            blocks.add(new Machine.BlockAt(Machine.CARD, card.id(), flow, share * cardW));
            air += (1 - share) * cardW;
        } else {
            air += cardW;
        }
        if (fault != RankFault.SUPPLIES_KEEP_THEIR_HEAT) {
            air += practice.heat().supplyHeatShare() * lossW(question, parts);
        }
        Duty duty = new Duty(run.pumpDutyPercent().orElse(practice.loop().pumpDutyPercent()));
        LoopWish.BlockOrder order = run.blocks().orElse(LoopWish.BlockOrder.SERIES);
        Machine.Water water = new Machine.Water(
                new Machine.PumpAt(BruteCore.only(Pump.class, parts), duty),
                coolant,
                new Machine.Runs(tube, question.brief().loop().tubeM()),
                blocks,
                fault == RankFault.BLOCKS_IN_SERIES ? LoopWish.BlockOrder.SERIES : order);
        return new BruteLoop(water, air);
    }

    private static List<Drive> drives(OracleCase question) {
        return question.brief().parts().drives().stream()
                .map(id -> question.catalog().part(Drive.class, id))
                .toList();
    }

    /** What the supply draws less what it delivers. */
    private static double lossW(OracleCase question, List<Part> parts) {
        Practice.Heat heat = question.catalog().practice().heat();
        Stream<Double> fixed = Stream.of(
                BruteCore.only(Processor.class, parts).heat().worstW(),
                BruteCore.only(GraphicsCard.class, parts).power().worstW(),
                BruteCore.only(Board.class, parts).electric().heatW(),
                BruteCore.only(Pump.class, parts).electric().powerW(),
                heat.miscHeatW());
        double loadW = Stream.concat(fixed, drives(question).stream().map(Drive::heatW))
                .map(w -> BigDecimal.valueOf(w).setScale(3, RoundingMode.HALF_UP))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .doubleValue();
        Supply.Output output = BruteCore.only(Supply.class, parts).output();
        double percent = efficiencyPercent(output, 100 * loadW / output.ratedW(), heat.supplyEfficiencyPercent());
        return loadW * 100 / percent - loadW;
    }

    private static double efficiencyPercent(Supply.Output output, double loadPercent, double usualPercent) {
        List<Supply.EfficiencyPoint> points = output.efficiency();
        if (points.isEmpty()) {
            return usualPercent;
        }
        int last = points.size() - 1;
        if (loadPercent <= points.get(0).loadPercent()) {
            return points.get(0).efficiencyPercent();
        }
        for (int i = 0; i < last; i++) {
            Supply.EfficiencyPoint a = points.get(i);
            Supply.EfficiencyPoint b = points.get(i + 1);
            if (loadPercent <= b.loadPercent()) {
                double slope = (b.efficiencyPercent() - a.efficiencyPercent()) / (b.loadPercent() - a.loadPercent());
                return a.efficiencyPercent() + slope * (loadPercent - a.loadPercent());
            }
        }
        return points.get(last).efficiencyPercent();
    }
}
