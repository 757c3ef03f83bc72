package loopwright.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Supply;
import loopwright.catalog.part.Tube;
import loopwright.catalog.standard.Practice;
import loopwright.fit.FitCase;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.Role;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.SoundPower;
import loopwright.power.LoadParts;
import loopwright.power.SupplyLoss;
import loopwright.power.SupplyNoise;

/**
 * Heat at full load of a choice of parts, and the loop they make.
 *
 * <p>A block takes its share of a part's heat; the rest, cards with their own cooler, board, drives, memory, small parts and
 * what the supply loses warm the case.
 */
public final class CoreHeat {

    private final FitCase fitCase;
    private final Tube tube;
    private final Coolant coolant;
    private final LoopWish.Run run;

    /** Heats of a case's choices. */
    public CoreHeat(FitCase fitCase) {
        this.fitCase = fitCase;
        LoopWish loop = fitCase.brief().loop();
        this.tube = Cores.cheapest(fitCase.catalog(), Tube.class, loop.tube());
        this.coolant = Cores.cheapest(fitCase.catalog(), Coolant.class, loop.coolant());
        this.run = loop.run().orElse(LoopWish.Run.USUAL);
    }

    /** The heat of a choice. */
    LoopHeat of(Chosen chosen) {
        Practice.Heat practice = fitCase.catalog().practice().heat();
        Machine.Water water = water(chosen);
        double blocksW = 0;
        for (Machine.BlockAt block : water.blocks()) {
            blocksW += block.heatW();
        }
        Processor processor = chosen.the(Role.PROCESSOR, Processor.class);
        GraphicsCard card = chosen.the(Role.CARD, GraphicsCard.class);
        double drivesW = 0;
        for (Drive drive : fitCase.drives()) {
            drivesW += drive.heatW();
        }
        double caseW = processor.heat().worstW()
                + card.power().worstW()
                - blocksW
                + chosen.the(Role.BOARD, Board.class).electric().heatW()
                + drivesW
                + practice.miscHeatW()
                + practice.supplyHeatShare() * supplyW(chosen, practice);
        return new LoopHeat(water, blocksW + water.pump().heatW(), caseW);
    }

    /** The loop of a choice. */
    public Machine.Water water(Chosen chosen) {
        int pumpDuty =
                run.pumpDutyPercent().orElse(fitCase.catalog().practice().loop().pumpDutyPercent());
        return new Machine.Water(
                new Machine.PumpAt(chosen.the(Role.PUMP, Pump.class), new Duty(pumpDuty)),
                coolant,
                new Machine.Runs(tube, fitCase.brief().loop().tubeM()),
                blocks(chosen),
                run.blocks().orElse(LoopWish.BlockOrder.SERIES));
    }

    private List<Machine.BlockAt> blocks(Chosen chosen) {
        double share = fitCase.catalog().practice().heat().blockCaptureShare();
        Processor processor = chosen.the(Role.PROCESSOR, Processor.class);
        GraphicsCard card = chosen.the(Role.CARD, GraphicsCard.class);
        List<Machine.BlockAt> out = new ArrayList<>();
        out.add(new Machine.BlockAt(
                Machine.PROCESSOR,
                processor.id(),
                chosen.the(Role.BLOCK, Block.class).flow(),
                share * processor.heat().worstW()));
        Optional<Block.Flow> block = card.power().block();
        if (card.cooling() == GraphicsCard.Cooling.BLOCK && block.isPresent()) {
            out.add(new Machine.BlockAt(
                    Machine.CARD, card.id(), block.get(), share * card.power().worstW()));
        }
        return out;
    }

    private double supplyW(Chosen chosen, Practice.Heat practice) {
        return SupplyLoss.lossW(
                chosen.the(Role.SUPPLY, Supply.class), worstLoadW(chosen), practice.supplyEfficiencyPercent());
    }

    /** The sum of all worst loads of a choice, W. */
    private double worstLoadW(Chosen chosen) {
        return LoadParts.watts(
                loadParts(fitCase, chosen).worstMilliW(fitCase.catalog().practice()));
    }

    /** What draws power in a choice. */
    public static LoadParts loadParts(FitCase fitCase, Chosen chosen) {
        return new LoadParts(
                chosen.the(Role.PROCESSOR, Processor.class),
                chosen.the(Role.CARD, GraphicsCard.class),
                chosen.the(Role.BOARD, Board.class),
                chosen.the(Role.PUMP, Pump.class),
                fitCase.drives());
    }

    /** The sound of a choice's supply at the sum of all worst loads. */
    public SoundPower supplySound(Chosen chosen) {
        return SoundPower.ofDBA(SupplyNoise.levelDBA(chosen.the(Role.SUPPLY, Supply.class), worstLoadW(chosen)));
    }
}
