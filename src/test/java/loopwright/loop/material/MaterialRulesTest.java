package loopwright.loop.material;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Coolant.Additives;
import loopwright.catalog.part.Coolant.BaseLiquid;
import loopwright.catalog.part.Coolant.Biocide;
import loopwright.catalog.part.Coolant.Seal;
import loopwright.catalog.part.Coolant.Tint;
import loopwright.catalog.part.Tube;
import loopwright.catalog.standard.MaterialPractice;
import loopwright.loop.material.LoopMaterials.FittingPiece;
import loopwright.loop.material.LoopMaterials.Fittings;
import loopwright.loop.material.LoopMaterials.Piece;
import loopwright.loop.material.LoopMaterials.Warmth;
import loopwright.quantity.Dimension;
import org.junit.jupiter.api.Test;

/** Each rule kept, broken, at its limit, with its sentence. */
class MaterialRulesTest {

    private static final Additives GOOD = new Additives(List.of(Biocide.ORGANIC), Tint.CLEAR, List.of());

    private Wetted radiator = Wetted.COPPER;
    private Fittings fittings = new Fittings(List.of(new FittingPiece("f", Wetted.NICKEL_BRASS)), true);
    private Tube.Kind kind = Tube.Kind.SOFT;
    private Optional<Tube.Material> tube = Optional.of(Tube.Material.EPDM);
    private BaseLiquid base = BaseLiquid.WATER;
    private boolean inhibited = true;
    private int months = 12;
    private Optional<Additives> additives = Optional.of(GOOD);
    private List<Biocide> added = List.of();
    private double warmestC = 40;
    private double channelMm = 0.4;

    private String said(String rule) {
        Dimension mm = Dimension.ofHmm(1000);
        LoopMaterials loop = new LoopMaterials(
                List.of(
                        new Piece("block b", Wetted.COPPER, true, Optional.of(channelMm)),
                        new Piece("roof radiator r", radiator, false, Optional.empty())),
                fittings,
                new Tube("t", "t", Optional.empty(), new Purchase(1, 1), kind, mm, mm, mm, tube),
                new Coolant(
                        "c",
                        "c",
                        Optional.empty(),
                        new Purchase(1, 1),
                        base,
                        Optional.empty(),
                        Optional.empty(),
                        inhibited,
                        months,
                        additives),
                added,
                new Warmth(warmestC, 42),
                MaterialPractice.USUAL);
        Finding found = MaterialRules.of(loop).stream()
                .filter(f -> f.rule().equals("material." + rule))
                .findFirst()
                .orElseThrow();
        return found.verdict() + " " + found.sentence();
    }

    @Test
    void aluminiumAndCopper() {
        assertThat(said("aluminium-copper")).isEqualTo("OK radiators and blocks all of copper");
        radiator = Wetted.ALUMINIUM;
        assertThat(said("aluminium-copper"))
                .isEqualTo("BROKEN aluminium (roof radiator r) and copper (block b) in one loop: the aluminium"
                        + " dissolves and leaks follow");
        assertThat(said("fitting-metal")).startsWith("BROKEN brass fittings (f) beside aluminium (roof radiator r)");
    }

    @Test
    void fittings() {
        assertThat(said("zinc-fitting")).startsWith("OK");
        fittings = new Fittings(List.of(new FittingPiece("z", Wetted.ZINC_PLATED)), true);
        assertThat(said("zinc-fitting"))
                .isEqualTo("BROKEN zinc-plated: z; the plating goes into the coolant, take others");
        fittings = new Fittings(List.of(new FittingPiece("z", Wetted.ZINC_PLATED)), false);
        assertThat(said("zinc-fitting"))
                .isEqualTo("WARN zinc-plated: z; the plating goes into the coolant, do not buy these");
        fittings = new Fittings(List.of(new FittingPiece("a", Wetted.ALUMINIUM)), true);
        assertThat(said("fitting-metal"))
                .isEqualTo("BROKEN aluminium fittings (a) beside copper dissolve: take others");
    }

    @Test
    void biocides() {
        assertThat(said("one-biocide")).isEqualTo("OK one biocide: organic");
        added = List.of(Biocide.SILVER);
        assertThat(said("one-biocide"))
                .isEqualTo("BROKEN two biocides at once (silver and organic) in c: leave the added one out");
        additives = Optional.of(new Additives(List.of(), Tint.CLEAR, List.of()));
        assertThat(said("one-biocide")).startsWith("WARN silver with the inhibitor of c");
        inhibited = false;
        assertThat(said("one-biocide")).startsWith("OK one biocide");
        added = List.of();
        assertThat(said("growth")).isEqualTo("WARN no biocide at all in c: something will grow; add one");
        additives = Optional.empty();
        assertThat(said("growth")).startsWith("UNKNOWN");
        assertThat(said("one-biocide")).startsWith("UNKNOWN");
    }

    @Test
    void inhibitorAndSeals() {
        assertThat(said("inhibitor")).isEqualTo("OK inhibited: c");
        inhibited = false;
        assertThat(said("inhibitor")).startsWith("WARN c has no inhibitor");
        fittings = new Fittings(List.of(new FittingPiece("p", Wetted.PLASTIC)), true);
        assertThat(said("inhibitor")).startsWith("OK");
        assertThat(said("seals")).startsWith("OK");
        additives = Optional.of(new Additives(List.of(), Tint.CLEAR, List.of(Seal.EPDM)));
        assertThat(said("seals")).isEqualTo("BROKEN c swells EPDM: tube t and rings of EPDM");
        tube = Optional.of(Tube.Material.CLEAR_PVC);
        assertThat(said("seals")).isEqualTo("BROKEN c swells EPDM, which rings are usually made of");
    }

    @Test
    void tubes() {
        assertThat(said("plasticiser")).startsWith("OK");
        tube = Optional.of(Tube.Material.CLEAR_PVC);
        assertThat(said("plasticiser")).startsWith("WARN clear soft tube (t)");
        tube = Optional.empty();
        assertThat(said("plasticiser")).startsWith("UNKNOWN");
        kind = Tube.Kind.RIGID;
        tube = Optional.of(Tube.Material.PETG);
        warmestC = 45;
        assertThat(said("tube-temperature"))
                .isEqualTo("OK PETG tube t: coolant reaches 45 C, planned for 45, bears 60");
        warmestC = 45.1;
        assertThat(said("tube-temperature"))
                .isEqualTo("WARN PETG tube t: coolant reaches 45.1 C, planned for at most 45");
        warmestC = 60;
        assertThat(said("tube-temperature")).startsWith("WARN");
        warmestC = 60.1;
        assertThat(said("tube-temperature")).startsWith("BROKEN PETG tube t softens");
    }

    @Test
    void colourPoisonAndChange() {
        assertThat(said("colour")).startsWith("OK");
        additives = Optional.of(new Additives(List.of(), Tint.PIGMENTED, List.of()));
        assertThat(said("colour")).isEqualTo("WARN particles of c clog channels below 0.5 mm: block b");
        assertThat(said("change")).isEqualTo("WARN its sheet says every 12 months; so coloured, change every 6");
        months = 6;
        assertThat(said("change")).isEqualTo("OK change every 6 months");
        channelMm = 0.5;
        assertThat(said("colour")).startsWith("OK");
        channelMm = 0.4;
        additives = Optional.of(new Additives(List.of(), Tint.GLITTER, List.of()));
        assertThat(said("colour")).startsWith("BROKEN flakes of c");
        assertThat(said("poison")).startsWith("OK");
        base = BaseLiquid.ETHYLENE_GLYCOL;
        assertThat(said("poison")).contains("children and pets").startsWith("WARN");
    }
}
