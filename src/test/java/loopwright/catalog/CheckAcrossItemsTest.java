package loopwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import loopwright.catalog.read.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What needs several items: each check broken once, with its literal message. */
class CheckAcrossItemsTest {

    private static final String CUBE = "catalogs/chassis/cube.yaml";

    /** Breaks a copy of the tiny catalogue and returns the problems, without the folder's own name. */
    static List<String> broken(Path folder, String file, String from, String to) {
        return problems(TinyCatalog.in(folder).change(file, from, to));
    }

    static List<String> problems(TinyCatalog tiny) {
        String root = tiny.file("x").getParent() + "/";
        return FileCheck.check(List.of(tiny.file("scenarios")), tiny.folder()).stream()
                .map(Problem::text)
                .map(t -> t.replace(root, ""))
                .toList();
    }

    private static String cube(String place, String message) {
        return CUBE + ":" + place + ": chassis \"cube\": " + message;
    }

    @Test
    void theTinyCatalogueIsSound(@TempDir Path folder) {
        assertThat(problems(TinyCatalog.in(folder))).isEmpty();
    }

    @Test
    void idsAreUnique(@TempDir Path folder) {
        assertThat(broken(folder, "catalogs/tubes.yaml", "id: h-1", "id: p-1"))
                .contains("catalogs/tubes.yaml:4:10: tube \"p-1\": id: found \"p-1\" a second time, allowed an id that"
                        + " nothing else in the catalogue has. It is already that of a pump at catalogs/pumps.yaml:4.");
        assertThat(broken(folder, CUBE, "id: raise-roof", "id: take-cage"))
                .contains(cube(
                        "76:13",
                        "mods[1].id: found \"take-cage\" a second time, allowed an id that nothing else"
                                + " of its kind in this chassis has"));
    }

    @Test
    void idsAreWellFormed(@TempDir Path folder) {
        assertThat(broken(folder, "catalogs/coolants.yaml", "id: w-1", "id: W_1"))
                .containsExactly(
                        "catalogs/coolants.yaml:4:10: coolant \"W_1\": id: found \"W_1\", allowed small letters,"
                                + " digits and single hyphens, at most 60");
    }

    @Test
    void referencesExist(@TempDir Path folder) {
        assertThat(broken(folder, CUBE, "requires: [take-cage]", "requires: [take-cge]"))
                .containsExactly(cube(
                        "79:28",
                        "mods[1].rules.requires[0]: found \"take-cge\", allowed the id of a mod of"
                                + " this chassis. Maybe take-cage?"));
        assertThat(broken(folder, CUBE, "cover: v-1", "cover: v-2"))
                .containsExactly(cube(
                        "87:36",
                        "mods[1].effect.covers[0].cover: found \"v-2\", allowed the id of a cover." + " Maybe v-1?"));
        assertThat(broken(folder, CUBE, "inside: cage", "inside: tray"))
                .containsExactly(cube(
                        "47:19",
                        "inside.places[1].inside: found \"tray\", allowed the id of a removable of" + " this chassis"));
        assertThat(broken(folder, CUBE, "touches: [strip]", "touches: [stripe]"))
                .containsExactly(cube(
                        "53:21",
                        "inside.places[2].touches[0]: found \"stripe\", allowed the id of an"
                                + " obstruction, removable or added body. Maybe strip?"));
        assertThat(broken(folder, CUBE, "panel: roof", "panel: rof"))
                .containsExactly(cube(
                        "56:16",
                        "mounts[0].panel: found \"rof\", allowed the id of a panel of this chassis." + " Maybe roof?"));
        assertThat(broken(folder, "catalogs/memory.yaml", "title: Memory", "title: Memory\n    variant_of: d-1"))
                .containsExactly(
                        "catalogs/memory.yaml:6:17: memory \"k-1\": variant_of: found \"d-1\", allowed the id of"
                                + " another memory");
    }

    @Test
    void curvesFallAndLossesRise(@TempDir Path folder) {
        assertThat(broken(folder, "catalogs/fans.yaml", "pressure_Pa: 12", "pressure_Pa: 30"))
                .containsExactly("catalogs/fans.yaml:13:44: fan \"f-140\": air.curve[1].pressure_Pa: found 30 after 25,"
                        + " allowed a curve that falls");
        assertThat(broken(folder, "catalogs/pumps.yaml", "flow_L_per_min: 20", "flow_L_per_min: 0"))
                .containsExactly(
                        "catalogs/pumps.yaml:12:28: pump \"p-1\": water.curve[1].flow_L_per_min: found 0 after 0,"
                                + " allowed a flow that rises from point to point");
        assertThat(broken(folder, "catalogs/blocks.yaml", "loss_kPa: 10", "loss_kPa: 0"))
                .containsExactly("catalogs/blocks.yaml:13:41: block \"b-1\": flow.loss[1].loss_kPa: found 0 after 0,"
                        + " allowed a curve that rises");
        assertThat(broken(folder, "catalogs/radiators.yaml", "loss_kPa: 3", "loss_kPa: 0"))
                .containsExactly("catalogs/radiators.yaml:21:37: radiator \"r-140\": core.loss[1].loss_kPa: found 0"
                        + " after 0, allowed a curve that rises");
        assertThat(broken(
                        folder,
                        "catalogs/radiators.yaml",
                        "loss_kPa: 3}]",
                        "loss_kPa: 3}], measured: {air_loss: [{airflow_m3_per_h: 60, loss_Pa: 9}]}"))
                .containsExactly("catalogs/radiators.yaml:21:63: radiator \"r-140\": core.measured.air_loss: found 1"
                        + " points, allowed at least two points");
    }

    @Test
    void radiatorsHaveALoss(@TempDir Path folder) {
        assertThat(broken(
                        folder,
                        "catalogs/radiators.yaml",
                        "[{flow_L_per_min: 0, loss_kPa: 0},\n      {flow_L_per_min: 4, loss_kPa: 3}]",
                        "[]"))
                .containsExactly("catalogs/radiators.yaml:20:82: radiator \"r-140\": core.loss: found 0 points, allowed"
                        + " at least two points");
    }

    @Test
    void coresFit(@TempDir Path folder) {
        String radiators = "catalogs/radiators.yaml";
        assertThat(broken(
                        folder,
                        radiators,
                        "tube_rows: 1",
                        "tube_rows: 6, tubes: {thickness_mm: 4, wall_mm: 0.2, passes: 2}"))
                .containsExactly("catalogs/radiators.yaml:20:56: radiator \"r-140\": core.tube_rows: found 6, allowed"
                        + " rows of tubes deeper than their thickness of 4 mm in a core of 18 mm");
        assertThat(broken(folder, "shared/practice.yaml", "louvre_length_mm: 7", "louvre_length_mm: 9.5"))
                .containsExactly(
                        "shared/practice.yaml:26:72: practice: core.fins.louvre_length_mm: found 9.5, allowed at"
                                + " most the fin's height, 9");
    }

    /** 60 m³/h of air take 19.85 W/K, of which 95 % are 18.86; on the coolant's mean that is a little more. */
    @Test
    void measuredHeatIsPossible(@TempDir Path folder) {
        String points =
                "loss_kPa: 3}], measured: {heat: [{airflow_m3_per_h: 60, flow_L_per_min: 4, conductance_W_per_K: ";
        assertThat(broken(folder, "catalogs/radiators.yaml", "loss_kPa: 3}]", points + "19.4}]}"))
                .isEmpty();
        assertThat(broken(folder, "catalogs/radiators.yaml", "loss_kPa: 3}]", points + "130}]}"))
                .containsExactly("catalogs/radiators.yaml:21:123: radiator \"r-140\":"
                        + " core.measured.heat[0].conductance_W_per_K: found 130, allowed what 60 m3/h of air and 4"
                        + " L/min of water can take up, less than 19.5. Maybe the sheet gives W at 10 K?");
    }

    @Test
    void efficiencyLoadsRise(@TempDir Path folder) {
        assertThat(broken(folder, "catalogs/supplies.yaml", "load_percent: 50", "load_percent: 20"))
                .containsExactly("catalogs/supplies.yaml:19:26: supply \"s-1\": output.efficiency[1].load_percent:"
                        + " found 20 after 20, allowed a load that rises from point to point");
    }

    @Test
    void halvesAreExact(@TempDir Path folder) {
        assertThat(broken(folder, "catalogs/radiators.yaml", "width_mm: 144", "width_mm: 144.01"))
                .containsExactly(
                        "catalogs/radiators.yaml:9:17: radiator \"r-140\": body.width_mm: found 144.01, allowed an"
                                + " even number of hundredths of a millimetre. It is halved about the centre: round the last"
                                + " digit to an even one.");
    }

    @Test
    void standardsCoverWhatIsUsed(@TempDir Path folder) {
        assertThat(broken(folder, "catalogs/fans.yaml", "size_mm: 140", "size_mm: 92"))
                .containsExactly(
                        "catalogs/fans.yaml:7:22: fan \"f-140\": frame.size_mm: found 92, allowed a fan size that"
                                + " shared/standards.yaml has a row for");
    }

    @Test
    void aModCanGoWithWhatItNeeds(@TempDir Path folder) {
        assertThat(broken(folder, CUBE, "{requires: [take-cage]}", "{requires: [take-cage], excludes: [take-cage]}"))
                .containsExactly(cube(
                        "79:17",
                        "mods[1].rules: found \"take-cage\" both needed and excluded, allowed a mod"
                                + " that can go with what it needs"));
    }

    @Test
    void aModCanGoWithWhatItNeedsAtOneRemove(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder);
        String between = """
                  - id: between
                    title: Between
                    kind: cut-window
                    rules: {requires: [take-cage]}
                    work: {labour_min: 5, paint_min: 0, wait_days: 0, material_cents: 0, risk: 1}
                    look: {visible_cuts: 0, hidden_cuts: 0, way_back: yes, height_added_mm: 0}
                  - id: raise-roof
            """;
        tiny.change(CUBE, "      - id: raise-roof\n", between.indent(-0))
                .change(
                        CUBE,
                        "rules: {requires: [take-cage]}\n        work: {labour_min: 180",
                        "rules: {requires: [between], excludes: [take-cage]}\n        work: {labour_min: 180");
        assertThat(problems(tiny))
                .containsExactly(cube(
                        "85:17",
                        "mods[2].rules: found \"take-cage\" both needed and excluded, allowed a mod"
                                + " that can go with what it needs"));
    }

    @Test
    void prerequisitesEnd(@TempDir Path folder) {
        assertThat(broken(folder, CUBE, "kind: take-out", "kind: take-out\n        rules: {requires: [raise-roof]}"))
                .containsExactly(cube(
                        "68:27",
                        "mods[0].rules.requires: found the circle take-cage → raise-roof →"
                                + " take-cage, allowed prerequisites that come to an end"));
    }

    @Test
    void coversOnOneMountExcludeEachOther(@TempDir Path folder) {
        assertThat(broken(
                        folder,
                        CUBE,
                        "removes: [cage]",
                        "removes: [cage]\n          covers: [{mount: roof, cover: v-1, over: rings, lengthwise_mm: 175,"
                                + " sideways_mm: 125}]"))
                .containsExactly(cube(
                        "80:17",
                        "mods[1].rules.excludes: found a raised cover on \"roof\" that can go with"
                                + " that of \"take-cage\", allowed raised covers on one mount that exclude each other. Add"
                                + " take-cage to excludes."));
    }

    @Test
    void bodiesAreInside(@TempDir Path folder) {
        assertThat(broken(folder, CUBE, "y_mm: [100, 340]", "y_mm: [100, 360]"))
                .containsExactly(cube(
                        "29:43",
                        "inside.obstructions[0].boxes[0].y_mm: found [100.0, 360.0], allowed a body"
                                + " inside the chassis, 0 to 350.0"));
    }

    @Test
    void patchesAndMountsLieInTheirPlane(@TempDir Path folder) {
        assertThat(broken(folder, CUBE, "flat: {y_mm: [0, 350], z_mm: [0, 300]}", "flat: {x_mm: [0, 5], z_mm: [0, 9]}"))
                .containsExactly(cube(
                        "20:75", "shell.panels[1].flat: found x_mm and z_mm, allowed y_mm and z_mm on the" + " left"));
        assertThat(broken(folder, CUBE, "lengthwise: y", "lengthwise: z"))
                .containsExactly(cube(
                        "57:21",
                        "mounts[0].lengthwise: found z, allowed an axis in the plane of the roof."
                                + " That axis is square to it."));
    }

    @Test
    void seatsStayOnTheFlat(@TempDir Path folder) {
        assertThat(broken(folder, CUBE, "lengthwise_mm: [[165, 180]]", "lengthwise_mm: [[140, 180]]"))
                .containsExactly(
                        cube(
                                "60:46",
                                "mounts[0].seats[0].lengthwise_mm[0]: found 140.0 to 180.0, allowed 144.5 to"
                                        + " 205.5, where the screws stay on the flat of panel \"roof\""),
                        cube(
                                "89:16",
                                "mods[1].effect.airways[0]: found a cut that comes within -5.0 mm of the edge of the flat of"
                                        + " panel \"roof\", allowed at least one sheet thickness, 1.0 mm, wherever 2x140 goes"
                                        + " (mounts[0].seats[0]). Make the cut or the range of the seat narrower."));
        assertThat(broken(folder, CUBE, "over: window, lengthwise_mm: 175", "over: rings, lengthwise_mm: 175"))
                .isEmpty();
        TinyCatalog tiny = TinyCatalog.in(folder)
                .change(CUBE, "over: window, lengthwise_mm: 175", "over: rings, lengthwise_mm: 175")
                .change(CUBE, "lengthwise_mm: [[170, 175]]", "lengthwise_mm: [[120, 175]]");
        assertThat(problems(tiny))
                .containsExactly(
                        cube(
                                "85:54",
                                "mods[1].effect.seats[0].seat.lengthwise_mm[0]: found 120.0 to 175.0, allowed"
                                        + " 125.75 to 224.25, where the screws stay on the flat of panel \"roof\". A new hole keeps one"
                                        + " sheet thickness to the edge of the flat."),
                        cube(
                                "89:16",
                                "mods[1].effect.airways[0]: found a cut that comes within -8.0 mm of the edge of the flat of"
                                        + " panel \"roof\", allowed at least one sheet thickness, 1.0 mm, wherever 2x120 goes"
                                        + " (mods[1].effect.seats[0].seat). Make the cut or the range of the seat narrower."));
    }

    @Test
    void newHolesMissOldSlots(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder)
                .change(CUBE, "over: window, lengthwise_mm: 175", "over: rings, lengthwise_mm: 175")
                .change(CUBE, "x_mm: [20, 24], y_mm: [30, 60]", "x_mm: [68, 71], y_mm: [55, 70]");
        assertThat(problems(tiny))
                .containsExactly(
                        cube(
                                "85:22",
                                "mods[1].effect.seats[0].seat: found a screw hole that can lie half in slot"
                                        + " \"roof-slot-1\", allowed holes in sound metal at every position. Narrow or split the range."));
        tiny.change(CUBE, "x_mm: [68, 71], y_mm: [55, 70]", "x_mm: [60, 90], y_mm: [50, 70]");
        assertThat(problems(tiny)).isEmpty();
    }

    @Test
    void coversStayOnTheFlat(@TempDir Path folder) {
        assertThat(broken(folder, CUBE, "lengthwise_mm: 175", "lengthwise_mm: 185.99"))
                .isEmpty();
        assertThat(broken(folder, CUBE, "lengthwise_mm: 175", "lengthwise_mm: 186"))
                .isEmpty();
        assertThat(broken(folder, CUBE, "lengthwise_mm: 175", "lengthwise_mm: 186.01"))
                .containsExactly(cube(
                        "87:70",
                        "mods[1].effect.covers[0].lengthwise_mm: found an outline from 31.01 to"
                                + " 341.01, allowed at most 1.0 mm past the flat of panel \"roof\", 10.0 to 340.0"));
    }

    @Test
    void glassStaysWhole(@TempDir Path folder) {
        assertThat(broken(folder, CUBE, "material: steel", "material: glass"))
                .containsExactly(
                        cube(
                                "87:47",
                                "mods[1].effect.covers[0].over: found a cut in panel \"roof\", which is glass,"
                                        + " allowed cuts and holes in metal, plastic or acrylic"),
                        cube(
                                "89:34",
                                "mods[1].effect.airways[0].cut: found a cut in panel \"roof\", which is glass,"
                                        + " allowed cuts and holes in metal, plastic or acrylic"));
    }
}
