package loopwright.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.basis.Span;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Practice;
import loopwright.quantity.Dimension;
import org.junit.jupiter.api.Test;

class SupplyNeedTest {

    private static final Purchase FREE = new Purchase(0, 0);
    private static final Dimension MM = Dimension.ofHmm(100);
    private static final SizeMm SIZE = new SizeMm(MM, MM, MM);

    private static final Practice.Heat HEAT = new Practice.Heat(60, 1, 0, 90, new Practice.BlockStep(4, 0, 0));

    private static final Processor PROCESSOR =
            new Processor("cpu", "Sample", Optional.empty(), FREE, "S1", new Processor.Heat(120, 180, 1), 500);
    private static final GraphicsCard CARD = new GraphicsCard(
            "card",
            "Sample",
            Optional.empty(),
            FREE,
            GraphicsCard.Cooling.AIR,
            new GraphicsCard.Body(MM, MM, MM, MM, MM),
            new GraphicsCard.Power(250, 350, 2, 0, Optional.empty()),
            500);

    /** Trade's worked case: processor 180 + card 350 + rest 60, a quarter more is 737.5; a 750 supply carries it. */
    @Test
    void aQuarterMoreThanTheSum() {
        SupplyNeed need = SupplyNeed.of(
                new LoadSum(List.of(Load.of(PROCESSOR), Load.of(CARD), Load.ofSmallParts(HEAT))),
                25,
                Plugs.wanted(PROCESSOR, CARD, List.of()));

        assertThat(need.loadMilliwatts()).isEqualTo(590_000);
        assertThat(need.ratingW()).isEqualTo("737.5");
        assertThat(need.isMetBy(output(750, 2))).isTrue();
        assertThat(need.isMetBy(output(700, 2))).isFalse();
    }

    @Test
    void exactlyAtTheLimitCarries() {
        SupplyNeed need = new SupplyNeed(590_000, 25, new Plugs(0, 0, 0, 0));

        assertThat(need.isRatedBy(output(737.5, 0))).isTrue();
        assertThat(need.isRatedBy(output(737.499, 0))).isFalse();
        assertThat(new SupplyNeed(590_001, 25, need.plugs()).isRatedBy(output(737.501, 0)))
                .isFalse(); // 737.50125
        assertThat(new SupplyNeed(600_000, 0, need.plugs()).ratingW()).isEqualTo("600");
    }

    @Test
    void everyKindOfPartBringsItsLoad() {
        Drive disk = drive("disk", Drive.DriveForm.D3_5, 9.2);
        Drive stick = drive("stick", Drive.DriveForm.M2, 8);
        Pump.Electric motor = new Pump.Electric(18, 15, 50, 30);
        Pump pump = new Pump(
                "pump",
                "Sample",
                Optional.empty(),
                FREE,
                Pump.Kind.PUMP,
                SIZE,
                new Pump.Water(List.of(), 1, MM),
                motor);
        List<Load> loads = new ArrayList<>(List.of(
                Load.of(PROCESSOR), Load.of(CARD), Load.of(board()), Load.of(disk), Load.of(stick), Load.of(pump)));

        assertThat(loads)
                .extracting(Load::kind)
                .containsExactly(
                        Load.Kind.PROCESSOR,
                        Load.Kind.CARD,
                        Load.Kind.BOARD,
                        Load.Kind.DRIVE,
                        Load.Kind.DRIVE,
                        Load.Kind.PUMP);
        long sum = new LoadSum(loads).milliwatts();
        assertThat(sum).isEqualTo(180_000 + 350_000 + 20_100 + 9_200 + 8_000 + 18_000);
        Collections.reverse(loads);
        assertThat(new LoadSum(loads).milliwatts()).isEqualTo(sum);
        assertThat(Plugs.wanted(PROCESSOR, CARD, List.of(disk, stick))).isEqualTo(new Plugs(1, 2, 0, 1));
    }

    @Test
    void tenthsOfAWattAddWithoutDust() {
        assertThat(new LoadSum(Collections.nCopies(10, new Load(Load.Kind.DRIVE, "d", Load.milliwatts(0.1))))
                        .milliwatts())
                .isEqualTo(1000);
        assertThat(Load.milliwatts(0.0005)).isEqualTo(1);
        assertThat(Load.milliwatts(0.00049)).isZero();
        assertThat(Load.milliwatts(1.0015)).isEqualTo(1002);
    }

    @Test
    void anyMissingPlugFails() {
        Plugs there = Plugs.of(output(750, 2));

        assertThat(there).isEqualTo(new Plugs(2, 2, 1, 4));
        assertThat(there.cover(there)).isTrue();
        assertThat(there.cover(new Plugs(3, 0, 0, 0))).isFalse();
        assertThat(there.cover(new Plugs(0, 3, 0, 0))).isFalse();
        assertThat(there.cover(new Plugs(0, 0, 2, 0))).isFalse();
        assertThat(there.cover(new Plugs(0, 0, 0, 5))).isFalse();
        assertThat(new SupplyNeed(0, 0, new Plugs(0, 3, 0, 0)).isMetBy(output(750, 2)))
                .isFalse();
    }

    @Test
    void refusesNegativeLoads() {
        assertThatThrownBy(() -> new Load(Load.Kind.MISC, "misc", -1)).hasMessageContaining("misc");
        assertThatThrownBy(() -> new SupplyNeed(1, -1, new Plugs(0, 0, 0, 0))).hasMessageContaining("-1 %");
    }

    private static Supply.Output output(double ratedW, int cardEightPinPlugs) {
        return new Supply.Output(ratedW, 2, cardEightPinPlugs, 1, 4, 30, List.of());
    }

    private static Drive drive(String id, Drive.DriveForm form, double heatW) {
        return new Drive(id, "Sample", Optional.empty(), FREE, form, SIZE, MM, heatW);
    }

    private static Board board() {
        Span span = new Span(MM, MM);
        return new Board(
                "board",
                "Sample",
                Optional.empty(),
                FREE,
                Board.BoardForm.MINI_ITX,
                new Board.Sockets("S1", MM, MM, new Board.MemoryBank(span, span, "G5", 2), MM),
                List.of(),
                new Board.Electric(20.1, 1, 4, 2, 3));
    }
}
