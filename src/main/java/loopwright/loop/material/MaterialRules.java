package loopwright.loop.material;

import java.util.List;

/** Every rule of materials, in the order they are told. */
public final class MaterialRules {

    private static final List<MaterialRule> ALL = List.of(
            new AluminiumAndCopperApart(),
            new NoZincInCoolant(),
            new FittingsSuitTheMetals(),
            new OneBiocide(),
            new SomethingKeepsGrowthDown(),
            new MixedMetalsAreInhibited(),
            new SealsBearTheCoolant(),
            new SoftTubeKeepsItsPlasticiser(),
            new ColourStaysOutOfThinChannels(),
            new TubeBearsTheTemperature(),
            new PoisonIsLabelled(),
            new CoolantIsChangedInTime());

    private MaterialRules() {}

    /** What each says of a loop. */
    public static List<Finding> of(LoopMaterials loop) {
        return ALL.stream()
                .map(rule -> {
                    MaterialRule.Said said = rule.check(loop);
                    return new Finding(rule.id(), said.verdict(), said.sentence(), rule.source());
                })
                .toList();
    }

    /** The worst that is said. */
    public static MaterialVerdict worst(List<Finding> findings) {
        return findings.stream().map(Finding::verdict).reduce(MaterialVerdict.OK, MaterialVerdict::or);
    }
}
