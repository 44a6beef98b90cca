package lanewright.planner.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Brings plans of older versions up to the present one, step by step. */
final class Upgrades {

    /** One step: a plan of one version becomes a plan of the next. */
    interface Step {
        /** The members of the plan in the next version. */
        Map<String, Node> next(Map<String, Node> members);
    }

    /** All steps of this program: the first from version 1 to 2, and so on. */
    static final Upgrades ALL = new Upgrades(List.of());

    private final List<Step> steps;

    Upgrades(List<Step> steps) {
        this.steps = List.copyOf(steps);
    }

    private int present() {
        return 1 + steps.size();
    }

    /** The version that a plan says it has. */
    int version(String file, Node.Members plan) throws PlanException {
        Node version = plan.values().get("version");
        Node.At at = version == null ? plan.at() : version.at();
        if (!(version instanceof Node.Number number)
                || !number.value().matches("[1-9][0-9]{0,5}")) {
            throw new PlanException(
                    file,
                    new Trouble(
                            at.line(),
                            at.column(),
                            "version",
                            "the plan does not say its version",
                            "Write \"version\": " + present() + " at its beginning."));
        }
        int said = Integer.parseInt(number.value());
        if (said > present()) {
            throw new PlanException(
                    file,
                    new Trouble(
                            at.line(),
                            at.column(),
                            "version",
                            "version "
                                    + said
                                    + " is newer than this program, which knows "
                                    + present(),
                            "Get a newer Lanewright."));
        }
        return said;
    }

    /** The plan in the present version; the same if it already is. */
    Node.Members upgraded(Node.Members plan, int version) {
        Map<String, Node> members = new LinkedHashMap<>(plan.values());
        for (int from = version; from < present(); from++) {
            members = new LinkedHashMap<>(steps.get(from - 1).next(members));
            members.put("version", new Node.Number(Node.At.NOWHERE, Integer.toString(from + 1)));
        }
        return new Node.Members(plan.at(), members);
    }
}
