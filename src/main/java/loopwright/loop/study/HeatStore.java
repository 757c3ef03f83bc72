package loopwright.loop.study;

import loopwright.catalog.part.Radiator;
import loopwright.loop.Machine;
import loopwright.loop.fluid.CoolantLiquid;
import loopwright.loop.fluid.Liquid;
import loopwright.quantity.Units;

/**
 * What a loop stores of heat: its coolant, its radiators and its blocks.
 *
 * <p><b>Units.</b> J/K.
 *
 * <p><b>Valid for</b> coolant filled in at the room's temperature; its heat capacity changes by less than 1 % up to 60 °C. Pump,
 * tube, tank walls and the parts under the blocks are left out, which errs to the fast side by 5 to 10 %.
 *
 * <p><b>Source.</b> Metals: [IncroperaDeWitt2007] table A.1. Masses of blocks: ASSUMED, see
 * {@code src/site/markdown/physics/assumptions.md}.
 */
final class HeatStore {

    /** Copper, J/(kg·K); [IncroperaDeWitt2007] table A.1. Brass is 380. */
    static final double COPPER_J_PER_KG_K = 385;

    /** Aluminium, J/(kg·K); [IncroperaDeWitt2007] table A.1. */
    static final double ALUMINIUM_J_PER_KG_K = 903;

    /** A processor's block, kg. ASSUMED: the middle of what such blocks weigh. */
    static final double PROCESSOR_BLOCK_KG = 0.45;

    /** A card's block, kg. ASSUMED: the middle of what such blocks weigh. */
    static final double CARD_BLOCK_KG = 1.2;

    private static final double KG_PER_G = 1e-3;
    private static final double M3_PER_ML = 1e-6;

    private final Machine machine;
    private final double coolantJPerM3K;

    HeatStore(Machine machine) {
        this.machine = machine;
        Liquid liquid = CoolantLiquid.of(machine.water().coolant());
        double roomC = machine.site().roomC();
        this.coolantJPerM3K = liquid.densityKgPerM3(roomC) * liquid.heatCapacityJPerKgK(roomC);
    }

    /**
     * The whole loop.
     *
     * @param moreCoolantML coolant that no part of the machine tells of: a reservoir of its own, at least 0
     */
    double loopJPerK(double moreCoolantML) {
        double sum = coolantM3(moreCoolantML) * coolantJPerM3K;
        for (Machine.FanMount mount : machine.mounts()) {
            sum += mount.radiator().map(r -> radiatorJPerK(r.radiator())).orElse(0.0);
        }
        for (Machine.BlockAt block : machine.water().blocks()) {
            sum += metalJPerK(block);
        }
        return sum;
    }

    /** All coolant, m³. */
    double coolantM3(double moreCoolantML) {
        Machine.Water water = machine.water();
        double ml = moreCoolantML + water.pump().pump().water().coolantML();
        for (Machine.FanMount mount : machine.mounts()) {
            ml += mount.radiator().map(r -> r.radiator().core().coolantML()).orElse(0.0);
        }
        for (Machine.BlockAt block : water.blocks()) {
            ml += block.flow().coolantML();
        }
        double boreM = water.runs().tube().boreMm().valueHmm() * Units.M_PER_HMM;
        return ml * M3_PER_ML + Math.PI / 4 * boreM * boreM * water.runs().lengthM();
    }

    /** A block and the coolant in it. */
    double blockJPerK(Machine.BlockAt block) {
        return metalJPerK(block) + block.flow().coolantML() * M3_PER_ML * coolantJPerM3K;
    }

    private static double metalJPerK(Machine.BlockAt block) {
        double massKg = block.name().equals(Machine.PROCESSOR) ? PROCESSOR_BLOCK_KG : CARD_BLOCK_KG;
        return massKg * heatCapacityJPerKgK(block.flow().metal());
    }

    private static double radiatorJPerK(Radiator radiator) {
        return radiator.body().massG()
                * KG_PER_G
                * heatCapacityJPerKgK(radiator.ports().metal());
    }

    private static double heatCapacityJPerKgK(Radiator.Metal metal) {
        return metal == Radiator.Metal.COPPER ? COPPER_J_PER_KG_K : ALUMINIUM_J_PER_KG_K;
    }
}
