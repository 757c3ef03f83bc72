package loopwright.answer.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.measure.Lengths;
import loopwright.catalog.standard.Practice.Takes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpotsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            chassis | shell.interior.height_mm | INSIDE | inside of the floor to the inside of the roof
            chassis | inside.places.shelf.pose.corner.y_mm | POSITION | inner face of the front to the corner of the place shelf
            chassis | inside.obstructions.tray.boxes.1.x_mm.from | POSITION | inner face of the left wall to the left face of tray
            chassis | inside.removables.tower.boxes.2.z_mm.to | POSITION | inner face of the floor to the upper face of tower, box 2
            chassis | mounts.roof.inset_mm | DEPTH | inner face of the roof panel's wall to the plane that its stack is screwed to
            chassis | mounts.roof.seats.1.lengthwise_mm.2.to | POSITION | inner face of the wall to the far end of the slot, lengthwise
            chassis | something.new_mm | POSITION | in the chassis: something new
            radiator | body.thickness_mm | OUTSIDE | over the radiator's flanges, face to face
            graphics card | body.length_mm | OUTSIDE | the card over everything, bracket face to far end
            pump | body.width_mm | OUTSIDE | the pump over everything: its width
            drive | plug_room_mm | OUTSIDE | on the drive: plug room
            """)
    void saysWhereALengthIsTaken(String kind, String path, Takes takes, String words) {
        assertThat(Spots.of(kind, path)).isEqualTo(new Spots.Spot(takes, words));
    }

    @Test
    void isNeverAtALoss() {
        Catalog catalog = CatalogReader.read(Path.of("catalogs"));
        Lengths lengths = new Lengths(catalog);
        Whereabouts whereabouts = new Whereabouts(catalog);
        lengths.ids()
                .forEach(id -> lengths.of(id)
                        .forEach(l -> assertThat(whereabouts
                                        .of(new Measurable(List.of(id), l.path(), l.dimension()))
                                        .words())
                                .isNotBlank()
                                .doesNotContain("_mm")));
    }
}
