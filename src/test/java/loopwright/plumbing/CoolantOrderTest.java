package loopwright.plumbing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import org.junit.jupiter.api.Test;

/** Volumes of tube and what is ordered, against handbook geometry and a worked loop; common practice, no source. */
final class CoolantOrderTest {

    /** Area of a circle: 10 mm bore 0.0785, 12 mm 0.1131, 13 mm 0.1327 L a metre. */
    @Test
    void tubeHoldsItsBore() {
        assertThat(CoolantOrder.tubeML(1000, 100_000)).isCloseTo(78.54, within(0.005));
        assertThat(CoolantOrder.tubeML(1200, 100_000)).isCloseTo(113.10, within(0.005));
        assertThat(CoolantOrder.tubeML(1300, 100_000)).isCloseTo(132.73, within(0.005));
        assertThat(CoolantOrder.tubeML(1000, 0)).isZero();
        assertThat(CoolantOrder.tubeML(2000, 50_000)).isCloseTo(2 * 78.54, within(0.01));
    }

    /** Tank 300, radiators 175 and 125, blocks 20 and 60, 1.5 m of 10 mm bore (118): 798 mL full, 1.54 L to order. */
    @Test
    void aWorkedLoop() {
        CoolantOrder order = CoolantOrder.of(
                List.of(300.0, 175.0, 125.0, 20.0, 60.0),
                CoolantOrder.tubeML(1000, 150_000),
                PlumbingPractice.USUAL.coolant());
        assertThat(order.tubeML()).isCloseTo(118, within(0.5));
        assertThat(order.fullML()).isCloseTo(798, within(0.5));
        assertThat(order.orderML() / 1000).isCloseTo(1.54, within(0.005));
    }
}
