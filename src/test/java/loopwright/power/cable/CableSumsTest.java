package loopwright.power.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.part.Lead;
import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Cabling;
import loopwright.catalog.standard.Cabling.PlugSize;
import loopwright.geometry.SpaceBox;
import org.junit.jupiter.api.Test;

/** Lengths, leads, volumes and sleeving by hand, from their formulas. */
class CableSumsTest {

    private static final double EXACT = 1e-9;

    private static final PlugSize MAIN = new PlugSize(Plug.MAIN_24, 52, 14, 20, 24, 18);
    private static final PlugSize PROCESSOR = new PlugSize(Plug.PROCESSOR_8, 22, 14, 15, 8, 11);
    private static final PlugSize SATA = new PlugSize(Plug.SATA, 24, 10, 15, 5, 7);
    private static final Cabling.Way WAY = new Cabling.Way(15, 4, 7, 20, 100, 35);

    /** (100 + 200 + 300 + 2 x 15) x 1.15 = 724.5; common practice: the sum along the axes, two plugs, 15 %. */
    @Test
    void theLengthIsTheWayTwoPlugsAndSlack() {
        assertThat(CableLength.fromSupplyMm(60_000, PROCESSOR, WAY)).isEqualTo(725);
        assertThat(CableLength.fromSupplyMm(0, MAIN, WAY)).isEqualTo(46);
        assertThat(CableLength.toNextMm(15_000, WAY)).isEqualTo(173);
    }

    private static Lead lead(String id, Lead.Kind kind, Plug plug, double lengthMm, long cents) {
        return new Lead(
                id,
                id,
                Optional.empty(),
                new Purchase(cents, 1),
                kind,
                plug,
                plug,
                1,
                lengthMm,
                Optional.empty(),
                Optional.empty());
    }

    @Test
    void theCheapestLeadsThatAreLongEnoughCure() {
        List<Lead> leads = List.of(
                lead("long", Lead.Kind.EXTENSION, Plug.SATA, 300, 900),
                lead("short", Lead.Kind.EXTENSION, Plug.SATA, 150, 400),
                lead("split", Lead.Kind.SPLITTER, Plug.SATA, 500, 1),
                lead("other", Lead.Kind.EXTENSION, Plug.CARD_8, 500, 1));
        assertThat(ids(leads, 150)).containsExactly("short");
        assertThat(ids(leads, 151)).containsExactly("short", "short");
        assertThat(ids(leads, 301)).containsExactly("long", "short");
        assertThat(ids(leads, 600)).containsExactly("long", "long");
        assertThat(LeadChoice.of(leads, Plug.SATA, 601)).isEmpty();
        assertThat(LeadChoice.of(leads, Plug.SATA, 301).orElseThrow().priceCents())
                .isEqualTo(1300);
    }

    private static List<String> ids(List<Lead> leads, int lacksMm) {
        return LeadChoice.of(leads, Plug.SATA, lacksMm).orElseThrow().leads().stream()
                .map(Lead::id)
                .toList();
    }

    /** 18 mm round is 254.469 mm²; a metre of it put away at twice its volume takes 0.508938 L. */
    @Test
    void theVolumeIsTheBundleTimesTheLength() {
        assertThat(CableVolume.areaMm2(MAIN)).isCloseTo(254.46900494, within(1e-6));
        assertThat(CableVolume.litres(MAIN, 1000, 2)).isCloseTo(0.50893800988, within(EXACT));
    }

    private static SpaceBox box(Random dice, int size) {
        int x = dice.nextInt(size);
        int y = dice.nextInt(size);
        int z = dice.nextInt(size);
        return new SpaceBox(
                "box",
                false,
                0,
                new SpaceBox.Reach(x, x + 1 + dice.nextInt(size)),
                new SpaceBox.Reach(y, y + 1 + dice.nextInt(size)),
                new SpaceBox.Reach(z, z + 1 + dice.nextInt(size)));
    }

    /** Boxes of whole centimetres, every cubic centimetre asked. */
    @Test
    void theFreeVolumeIsWhatNoBoxFills() {
        for (int seed = 0; seed < 100; seed++) {
            Random dice = new Random(seed);
            SpaceBox whole = box(dice, 6);
            List<SpaceBox> filled = new ArrayList<>();
            for (int i = dice.nextInt(5); i > 0; i--) {
                filled.add(box(dice, 6));
            }
            int free = 0;
            for (int x = whole.x().from(); x < whole.x().to(); x++) {
                for (int y = whole.y().from(); y < whole.y().to(); y++) {
                    for (int z = whole.z().from(); z < whole.z().to(); z++) {
                        free += covered(filled, x, y, z) ? 0 : 1;
                    }
                }
            }
            assertThat(CableVolume.freeL(
                            cm(whole), filled.stream().map(CableSumsTest::cm).toList()))
                    .as("seed " + seed)
                    .isCloseTo(free / 1000.0, within(EXACT));
        }
    }

    private static boolean covered(List<SpaceBox> filled, int x, int y, int z) {
        return filled.stream()
                .anyMatch(b -> x + 0.5 > b.x().from()
                        && x + 0.5 < b.x().to()
                        && y + 0.5 > b.y().from()
                        && y + 0.5 < b.y().to()
                        && z + 0.5 > b.z().from()
                        && z + 0.5 < b.z().to());
    }

    private static SpaceBox cm(SpaceBox box) {
        return new SpaceBox(box.what(), box.room(), 0, cm(box.x()), cm(box.y()), cm(box.z()));
    }

    private static SpaceBox.Reach cm(SpaceBox.Reach reach) {
        return new SpaceBox.Reach(reach.from() * 1000, reach.to() * 1000);
    }

    /** 24 x 630 mm; and 5 wires over 450 and three times 150 mm, in four pieces of 30 mm more each. */
    @Test
    void sleevingIsCordOnEachPieceOfEachWire() {
        Cabling.Sleeve sleeve = new Cabling.Sleeve(30, 2);
        Supply.Cable main = new Supply.Cable(Plug.MAIN_24, 1, 600, Optional.empty(), false);
        assertThat(Sleeving.of(main, MAIN, sleeve)).isEqualTo(new Sleeving(24, 15.12, 48));
        Supply.Cable sata = new Supply.Cable(Plug.SATA, 4, 450, Optional.of(150.0), false);
        Sleeving chain = Sleeving.of(sata, SATA, sleeve);
        assertThat(chain.cordM()).isCloseTo(5.1, within(EXACT));
        assertThat(chain.shrinks()).isEqualTo(40);
    }
}
