package loopwright.paper;

import loopwright.answer.why.WhyAnswer;

/** A way to write why wishes cannot be had: begun once, given one chassis after the other, ended once. */
public interface WhyPaper {

    /** Before the first chassis. */
    void begin();

    /** One chassis; answers whether everything wished can be had. */
    boolean add(WhyAnswer answer);

    /** After the last chassis. */
    void end();
}
