package loopwright.catalog.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.List;
import loopwright.catalog.CatalogReader;
import loopwright.quantity.Dimension;
import loopwright.quantity.Known;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The grammar of what-ifs, against the demo's catalogue; values read off its files by hand. */
class AssumptionsTest {

    private static final Lengths LENGTHS = new Lengths(CatalogReader.read(Path.of("catalogs")));

    private static List<Replacement> of(String... texts) {
        return Assumptions.replacements(List.of(texts), LENGTHS);
    }

    private static String error(String... texts) {
        return String.valueOf(
                catchThrowableOfType(NotUnderstood.class, () -> of(texts)).getMessage());
    }

    @ParameterizedTest
    @CsvSource({
        "gpu-mid-block.length=305mm, gpu-mid-block.body.length_mm, 30500",
        "gpu-mid-block.body.length_mm=305.25 mm, gpu-mid-block.body.length_mm, 30525",
        "short-tower.shell.interior.height=-1mm, short-tower.shell.interior.height_mm, 43300",
        "short-tower.interior.height_mm=+0.5mm, short-tower.shell.interior.height_mm, 43450",
        "short-tower.roof.seats.1.lengthwise.2.to=+2mm, short-tower.mounts.roof.seats.1.lengthwise_mm.2.to, 21000",
        "rad-1x92-30a.thickness=+3mm, rad-1x92-30a.body.thickness_mm, 3300",
        "practice.port_room=+4mm, practice.room.port_room_mm, 4000",
    })
    void oneLength(String text, String address, int hmm) {
        assertThat(of(text)).singleElement().satisfies(r -> {
            assertThat(r.address()).isEqualTo(address);
            assertThat(r.to().valueHmm()).isEqualTo(hmm);
            assertThat(r.to().known()).isEqualTo(Known.ASSUMED);
            assertThat(r.to().plusMinusHmm()).isEqualTo(r.from().plusMinusHmm());
            assertThat(r.by()).isEqualTo("--assume " + text);
        });
    }

    @Test
    void aKindWordMeansAllItemsOfTheKind() {
        List<Replacement> cards = of("card.length=+3mm");
        assertThat(cards).hasSize(17).allSatisfy(r -> {
            assertThat(r.path()).isEqualTo("body.length_mm");
            assertThat(r.to().valueHmm() - r.from().valueHmm()).isEqualTo(300);
        });
        for (String kind : KindWord.words()) {
            assertThat(LENGTHS.ids(KindWord.find(kind).orElseThrow().kind()))
                    .as(kind)
                    .isNotEmpty();
        }
    }

    @Test
    void anUnknownLengthIsAssumedAbsolutelyOnly() {
        assertThat(of("mem-g5-48-unmeasured.height=44mm"))
                .singleElement()
                .satisfies(r -> assertThat(r.to()).isEqualTo(new Dimension(4400, 50, Known.ASSUMED)));
        assertThat(error("mem-g5-48-unmeasured.height=+2mm"))
                .isEqualTo(
                        "--assume mem-g5-48-unmeasured.height=+2mm: mem-g5-48-unmeasured.height_mm is unknown: it can"
                                + " only be assumed to be so much, like 30mm, not more or less");
        assertThat(of("memory.height=+2mm")).noneMatch(r -> r.id().equals("mem-g5-48-unmeasured"));
        assertThat(of("memory.height=42mm")).anyMatch(r -> r.id().equals("mem-g5-48-unmeasured"));
    }

    @Test
    void severalAtOnceAndEachLengthOnce() {
        assertThat(of("card.length=+3mm", "card.height=-1mm")).hasSize(34);
        assertThat(error("card.length=+3mm", "gpu-mid.length=300mm"))
                .isEqualTo("--assume gpu-mid.length=300mm: gpu-mid.body.length_mm is assumed already by --assume"
                        + " card.length=+3mm");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            card.length            | an assumption reads like card.length=+3mm or gpu-a.body.length_mm=305mm
            length=3mm             | an assumption reads like card.length=+3mm or gpu-a.body.length_mm=305mm
            card.length=+3         | "+3" is no length: write +3mm (longer), -0.5mm (shorter) or 305mm (exactly), with at most two decimals
            card.length=3cm        | "3cm" is no length: write +3mm (longer), -0.5mm (shorter) or 305mm (exactly), with at most two decimals
            card.length=+3.125mm   | "+3.125mm" is no length: write +3mm (longer), -0.5mm (shorter) or 305mm (exactly), with at most two decimals
            crad.length=+3mm       | "crad" is neither an id of the catalogue nor one of radiator, fan, card, memory, block, supply, drive, pump, reservoir, board, cover, chassis. Maybe card?
            gpu-mid-blok.length=1mm| "gpu-mid-blok" is neither an id of the catalogue nor one of radiator, fan, card, memory, block, supply, drive, pump, reservoir, board, cover, chassis. Maybe gpu-mid-block?
            card.lenght=+3mm       | no length "lenght" of any card. Maybe length?
            gpu-mid.lenght=+3mm    | no length "lenght" of gpu-mid. Maybe length?
            gpu-mid.colour=+3mm    | no length "colour" of gpu-mid
            radiator.core.depth=+3mm | no length "core.depth" of any radiator
            radiator.aside=+1mm    | "aside" can mean ports.at.1.aside_mm, ports.at.2.aside_mm of rad-1x120-20a: say more of it
            gpu-mid.length=2000mm  | gpu-mid.body.length_mm would be 2000.0 mm, allowed is 0 to 1000
            """)
    void saysWhatIsWrong(String text, String why) {
        assertThat(error(text)).isEqualTo("--assume " + text + ": " + why);
    }
}
