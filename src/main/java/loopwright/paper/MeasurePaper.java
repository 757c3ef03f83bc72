package loopwright.paper;

import loopwright.answer.measure.MeasureAnswer;

/** A way to write what to measure first: begun once, given one chassis after the other, ended once. */
public interface MeasurePaper {

    /** Before the first chassis. */
    void begin();

    /** One chassis; answers whether anything fits or waits. */
    boolean add(MeasureAnswer answer);

    /** After the last chassis. */
    void end();
}
