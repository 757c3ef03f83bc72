package loopwright.loop.study;

/** All duties between two, motor by motor, ends included. */
record DutyBox(Duties low, Duties high) {

    int width(int motor) {
        return high.at(motor) - low.at(motor);
    }

    /** The motor with the most duties left; the first of equals. */
    int widest() {
        int widest = 0;
        for (int i = 1; i <= low.pump(); i++) {
            widest = width(i) > width(widest) ? i : widest;
        }
        return widest;
    }

    int middle(int motor) {
        return low.at(motor) + width(motor) / 2;
    }

    DutyBox upTo(int motor, int percent) {
        return new DutyBox(low, high.with(motor, percent));
    }

    DutyBox from(int motor, int percent) {
        return new DutyBox(low.with(motor, percent), high);
    }
}
