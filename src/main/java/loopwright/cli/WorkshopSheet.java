package loopwright.cli;

import java.util.Locale;
import loopwright.workshop.drawing.Paper;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Papers that templates are printed on. */
enum WorkshopSheet {
    /** 210 x 297 mm. */
    A4(Paper.A4),
    /** 420 x 297 mm. */
    A3(Paper.A3),
    /** 215.9 x 279.4 mm. */
    LETTER(Paper.LETTER);

    private final Paper paper;

    WorkshopSheet(Paper paper) {
        this.paper = paper;
    }

    Paper paper() {
        return paper;
    }

    /** Reads a name, in large or small letters. */
    static final class Named implements ITypeConverter<WorkshopSheet> {
        @Override
        public WorkshopSheet convert(String text) {
            try {
                return valueOf(text.toUpperCase(Locale.ROOT));
            } catch (IllegalArgumentException e) {
                throw new TypeConversionException("must be A4, A3 or LETTER but was \"" + text + "\"");
            }
        }
    }
}
