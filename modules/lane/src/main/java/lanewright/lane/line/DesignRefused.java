package lanewright.lane.line;

import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.UnitSystem;

/**
 * A lane that cannot be laid out as it was asked for. Carries one finding for each reason, each
 * with the numbers and a remedy; the message is the first of them in metres.
 */
public final class DesignRefused extends Exception {

    private final transient List<Finding> findings;

    /**
     * A refusal.
     *
     * @param findings the reasons, at least one
     */
    public DesignRefused(List<Finding> findings) {
        super(words(findings));
        this.findings = List.copyOf(findings);
    }

    private static String words(List<Finding> findings) {
        if (findings.isEmpty()) {
            throw new IllegalArgumentException("a refusal needs a reason");
        }
        Finding first = findings.get(0);
        return first.says().in(UnitSystem.METRIC) + " " + first.remedy().in(UnitSystem.METRIC);
    }

    /** The reasons, at least one. */
    public List<Finding> findings() {
        return findings;
    }
}
