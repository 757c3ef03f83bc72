package loopwright.paper;

import loopwright.answer.FitAnswer;

/** A way to write what fits: begun once, given one chassis after the other, ended once. */
public interface FitPaper {

    /** Before the first chassis. */
    void begin();

    /** One chassis; answers whether anything was there to show. */
    boolean add(FitAnswer answer);

    /** After the last chassis. */
    void end();
}
