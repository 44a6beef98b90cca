package lanewright.drainage.flow;

import lanewright.drainage.pond.Trace;

/**
 * A way that water takes, from where enough land drains to it until it joins a larger one or
 * leaves.
 *
 * @param line its course
 * @param areaAtHead land that drains to its upper end, m²
 * @param areaAtFoot land that drains to its lower end, before it joins, m²
 */
public record FlowPath(Trace line, double areaAtHead, double areaAtFoot) {}
