package loopwright.catalog.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How components and enum values are called in files. */
class NamesTest {

    private static final Path GOLDEN = Path.of("src/test/resources/names.txt");

    @ParameterizedTest
    @CsvSource({
        "lengthMm, length_mm",
        "heatW, heat_W",
        "flowLPerMin, flow_L_per_min",
        "coolantML, coolant_mL",
        "headKPa, head_kPa",
        "pressurePa, pressure_Pa",
        "noiseMaxDBA, noise_max_dBA",
        "flowM3PerH, flow_m3_per_h",
        "resistanceKPerW, resistance_K_per_W",
        "conductanceWPerK, conductance_W_per_K",
        "conductivityWPerMK, conductivity_W_per_m_K",
        "louvreAngleDeg, louvre_angle_deg",
        "roomC, room_C",
        "caseMaxC, case_max_C",
        "volumeL, volume_L",
        "massG, mass_g",
        "massKg, mass_kg",
        "capacityGb, capacity_GB",
        "currentA, current_A",
        "labourMaxH, labour_max_h",
        "sideSlotAreaCm2, side_slot_area_cm2",
        "rateCentsPerH, rate_cents_per_h",
        "workHPerDay, work_h_per_day",
        "tubeM, tube_m",
        "m2Sockets, m2_sockets",
        "plusMinusMm, plus_minus_mm",
        "anyOf, any_of",
        "at, at",
    })
    void componentsHaveTheUnitInItsOwnCase(String component, String field) {
        assertThat(FieldName.of(component).text()).isEqualTo(field);
    }

    @Test
    void everyNameOfEveryRecordIsInTheList() throws IOException {
        TreeSet<String> names = new TreeSet<>();
        for (FileKind kind : FileKind.values()) {
            collect(kind.record(), names);
        }
        if (Boolean.getBoolean("loopwright.regenerate")) {
            Files.write(GOLDEN, names);
        }
        assertThat(Files.readAllLines(GOLDEN)).containsExactlyElementsOf(names);
    }

    private static void collect(Class<?> type, Set<String> names) {
        for (RecordComponent component : type.getRecordComponents()) {
            Slot slot = Slot.of(component);
            while (slot.raw() == List.class || slot.raw() == java.util.Optional.class) {
                slot = slot.held();
            }
            names.add(type.getSimpleName() + "." + component.getName() + " = "
                    + slot.name().text());
            if (slot.raw().isEnum()) {
                List<String> words = new ArrayList<>(Allowed.choices(slot.raw()));
                names.add(slot.raw().getSimpleName() + " = " + String.join(" | ", words));
            } else if (slot.isPlainRecord()) {
                collect(slot.raw(), names);
            }
        }
    }
}
