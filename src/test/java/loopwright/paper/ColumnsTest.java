package loopwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ColumnsTest {

    @Test
    void numbersGoRightAndTheLastColumnWraps() {
        Columns table = Columns.headed("gap, mm", "where")
                .row("3", "a")
                .row("12.5", "long ".repeat(30).strip());
        assertThat(table.lines("  "))
                .hasSize(4)
                .startsWith("  gap, mm  where", "        3  a")
                .allMatch(line -> line.length() <= 100);
        assertThat(table.lines("  ").get(3)).startsWith("           long");
    }

    @Test
    void lettersGoOnAfterZ() {
        assertThat(Letters.of(0)).isEqualTo("A");
        assertThat(Letters.of(25)).isEqualTo("Z");
        assertThat(Letters.of(26)).isEqualTo("AA");
        assertThat(Letters.of(701)).isEqualTo("ZZ");
        assertThat(Letters.of(702)).isEqualTo("AAA");
    }

    @Test
    void cellsAreSafeForSpreadsheets() {
        assertThat(Csv.cell("=1+1")).isEqualTo("'=1+1");
        assertThat(Csv.cell("@x")).isEqualTo("'@x");
        assertThat(Csv.cell("-0.5")).isEqualTo("-0.5");
        assertThat(Csv.cell("-x,y")).isEqualTo("\"'-x,y\"");
        assertThat(Csv.cell("a \"b\"")).isEqualTo("\"a \"\"b\"\"\"");
    }

    @Test
    void lengthsHaveNoNeedlessZeros() {
        assertThat(Mm.text(3000)).isEqualTo("30");
        assertThat(Mm.text(6150)).isEqualTo("61.5");
        assertThat(Mm.text(775)).isEqualTo("7.75");
        assertThat(Mm.text(-40)).isEqualTo("-0.4");
    }
}
