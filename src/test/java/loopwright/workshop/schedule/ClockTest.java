package loopwright.workshop.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.brief.WorkCalendar;
import org.junit.jupiter.api.Test;

/** Working time by hand: Thursday 5 March 2026, six hours from nine, Monday 9 March a holiday. */
class ClockTest {

    private static final WorkCalendar CALENDAR = new WorkCalendar(Optional.empty(), List.of(), List.of("2026-03-09"));
    private final Clock clock = new Clock(LocalDate.of(2026, 3, 5), CALENDAR::isWorkingDay, 9 * 60, 6 * 60);

    @Test
    void theEndOfADayIsNotTheStartOfTheNext() {
        assertThat(clock.daySteps()).isEqualTo(72);
        assertThat(clock.end(72)).isEqualTo(LocalDateTime.of(2026, 3, 5, 15, 0));
        assertThat(clock.begin(72)).isEqualTo(LocalDateTime.of(2026, 3, 6, 9, 0));
        assertThat(clock.begin(144)).as("weekend and holiday").isEqualTo(LocalDateTime.of(2026, 3, 10, 9, 0));
    }

    @Test
    void waitsRunThroughNightsAndDaysOff() {
        // Friday 15:00 and 24 hours: Saturday 15:00, so Tuesday morning.
        assertThat(clock.after(144, 24 * 60)).isEqualTo(144);
        // Thursday 15:00 and 18 h 30 min: Friday 09:30.
        assertThat(clock.begin(clock.after(72, 18 * 60 + 30))).isEqualTo(LocalDateTime.of(2026, 3, 6, 9, 30));
        // Thursday 10:00 and 24 hours: Friday 10:00.
        assertThat(clock.begin(clock.after(12, 24 * 60))).isEqualTo(LocalDateTime.of(2026, 3, 6, 10, 0));
        assertThat(clock.after(12, 0)).isEqualTo(12);
    }

    @Test
    void whatNoNightMayBreakWaitsForTheMorning() {
        Job coat = new Job("coat", 12, true, 0);
        assertThat(clock.fit(60, coat)).isEqualTo(60);
        assertThat(clock.fit(61, coat)).isEqualTo(72);
        assertThat(clock.fitBack(61, coat)).isEqualTo(60);
    }

    @Test
    void backwardsUndoesForwards() {
        for (int start = 0; start < 400; start++) {
            for (int wait : new int[] {0, 5, 17, 240, 1440, 5000}) {
                int last = clock.before(start, wait);
                assertThat(last < 0 || clock.after(last, wait) <= start).isTrue();
                assertThat(clock.after(last + 1, wait)).isGreaterThan(start);
            }
        }
    }

    /** Parcels come during the day: usable the next morning. */
    @Test
    void whatComesIsUsedFromTheNextStartOfWork() {
        assertThat(clock.begin(clock.arrival(1))).as("a Friday").isEqualTo(LocalDateTime.of(2026, 3, 10, 9, 0));
        assertThat(clock.begin(clock.arrival(2))).as("a Saturday").isEqualTo(LocalDateTime.of(2026, 3, 10, 9, 0));
        assertThat(clock.begin(clock.arrival(5))).as("a Tuesday").isEqualTo(LocalDateTime.of(2026, 3, 11, 9, 0));
        assertThat(clock.arrival(0)).as("it is there").isZero();
    }

    /** Twenty minutes before the end of Friday and as long on Tuesday. */
    @Test
    void workOverANightIsTwoPieces() {
        assertThat(clock.pieces(140, 8))
                .containsExactly(
                        new Clock.Piece(LocalDateTime.of(2026, 3, 6, 14, 40), LocalDateTime.of(2026, 3, 6, 15, 0)),
                        new Clock.Piece(LocalDateTime.of(2026, 3, 10, 9, 0), LocalDateTime.of(2026, 3, 10, 9, 20)));
        assertThat(clock.pieces(72, 72)).hasSize(1);
        assertThat(clock.pieces(72, 0)).isEmpty();
    }

    @Test
    void ordersGoOutOnWorkingDays() {
        assertThat(CALENDAR.onOrBefore(LocalDate.of(2026, 3, 9))).isEqualTo(LocalDate.of(2026, 3, 6));
        assertThat(CALENDAR.onOrAfter(LocalDate.of(2026, 3, 7))).isEqualTo(LocalDate.of(2026, 3, 10));
        assertThat(CALENDAR.onOrBefore(LocalDate.of(2026, 3, 6))).isEqualTo(LocalDate.of(2026, 3, 6));
    }
}
