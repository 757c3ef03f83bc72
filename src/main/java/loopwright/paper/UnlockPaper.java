package loopwright.paper;

import loopwright.answer.UnlockAnswer;

/** A way to write what mods unlock: begun once, given one chassis after the other, ended once. */
public interface UnlockPaper {

    /** Before the first chassis. */
    void begin();

    /** One chassis; answers whether anything fits at all. */
    boolean add(UnlockAnswer answer);

    /** After the last chassis. */
    void end();
}
