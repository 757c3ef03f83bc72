package loopwright.paper;

import loopwright.answer.RankAnswer;

/** A way to write ranked builds: begun once, given one chassis after the other, ended once. */
public interface RankPaper {

    /** Before the first chassis. */
    void begin();

    /** One chassis; answers whether there was a build to show. */
    boolean add(RankAnswer answer);

    /** After the last chassis. */
    void end();
}
