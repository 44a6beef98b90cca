package lanewright.planner.proposal;

import lanewright.lane.line.Profile;

/**
 * Where a profile is steepest: the first place along it, curves considered. Every sheet takes it
 * from here.
 *
 * @param station m
 * @param grade rise over run, negative downhill
 */
public record Steepest(double station, double grade) {

    /** Grades closer than this are equally steep, rise over run. */
    private static final double SAME = 1e-9;

    /** The steepest place: a grade changes evenly between joins, so it lies at one. */
    public static Steepest of(Profile profile) {
        var found = new Steepest(profile.from(), 0);
        found = found.or(profile, profile.from());
        for (double join : profile.joins()) {
            found = found.or(profile, join);
        }
        return found.or(profile, profile.to());
    }

    private Steepest or(Profile profile, double at) {
        Steepest steepest = this;
        for (double grade : new double[] {profile.grade(at), profile.gradeBefore(at)}) {
            if (Math.abs(grade) > Math.abs(steepest.grade) + SAME) {
                steepest = new Steepest(at, grade);
            }
        }
        return steepest;
    }
}
