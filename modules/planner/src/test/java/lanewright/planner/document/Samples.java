package lanewright.planner.document;

import java.nio.charset.StandardCharsets;

/** Plans for tests. */
final class Samples {

    private Samples() {}

    /** The least that a plan must say. */
    static final String LEAST =
            """
            {
              "version": 1,
              "name": "Test lane",
              "units": "us",
              "survey": { "files": [ { "path": "points.csv", "holds": "points" } ] },
              "line": {
                "points": [
                  { "east": "100 ft", "north": "200 ft" },
                  { "east": "500 ft", "north": "200 ft" }
                ]
              },
              "shapes": [ { "name": "lane", "layers": [ { "role": "base", "thickness": "6 in" } ] } ],
              "along": [ { "from": "start", "to": "end", "shape": "lane" } ],
              "stone": {
                "payload": "15 tons",
                "materials": [ { "role": "base", "kind": "crushed limestone, dense graded" } ]
              }
            }
            """;

    /** Everything that a plan can say. */
    static final String MOST =
            """
            {
              "$schema": "../docs/plan.schema.json",
              "version": 1,
              "name": "Test lane",
              "note": "written for a test",
              "date": "2 April",
              "units": "us",
              "currency": "dollars",
              "survey": {
                "frame": "EPSG:26916",
                "files": [
                  {
                    "path": "points.csv", "holds": "points", "unit": "ftUS", "heightUnit": "ft",
                    "columns": "name, northing, easting, height, code", "separator": "comma",
                    "decimal": "point", "epsg": 2965
                  },
                  { "path": "holes/probes.csv", "holds": "probes", "depthUnit": "in" },
                  {
                    "path": "land.geojson", "holds": "mixed", "coordinates": "local",
                    "heightProperty": "elev", "kindProperty": "what"
                  }
                ],
                "codes": {
                  "breaklines": ["edge", "ditch"], "start": "st", "end": "en",
                  "notGround": ["wire"]
                },
                "heightError": "1.2 in",
                "corridor": "250 ft"
              },
              "benchmarks": [
                { "name": "nail in oak", "east": "120 ft", "north": "85 ft", "height": "412.5 ft" }
              ],
              "line": {
                "points": [
                  { "name": "road", "east": "100 ft", "north": "200 ft" },
                  { "longitude": "-86.5°", "latitude": "39.2° N", "radius": "80 ft" },
                  { "east": "500 ft", "north": "200 ft" }
                ]
              },
              "ends": {
                "road": { "height": "410.2 ft", "grade": "-2 %", "crossSlope": "2 % right", "over": "20 ft" },
                "far": { "crossSlope": "level" },
                "roadDitch": "piped"
              },
              "grade": {
                "steepest": "12 %",
                "flattest": "0.5 %",
                "edgeAboveGround": "8 in",
                "curvePerPercent": "5 ft",
                "through": [ { "station": "2+00", "height": "412 ft" } ],
                "sagOutlets": [ { "station": "1+50.5", "how": "pipe" } ],
                "points": [
                  { "station": "start", "height": "410.2 ft" },
                  { "station": "2+00", "height": "411.25 ft", "curve": "60 ft" },
                  { "station": "end", "height": "430 ft" }
                ],
                "reasons": ["as staked"]
              },
              "shapes": [
                {
                  "name": "lane", "width": "14 ft", "fall": "shed left", "crossSlope": "1/2 in/ft",
                  "bed": "boxed",
                  "layers": [
                    { "role": "surface", "thickness": "2 in", "edgeSlope": "1:1" },
                    { "role": "base", "thickness": "6 1/2 in", "edgeSlope": "2:1", "width": "16 ft" }
                  ],
                  "subgradeFall": "5 %",
                  "left": {
                    "shoulder": "1 ft 6 in", "foreslope": "4:1", "ditch": "always",
                    "ditchDepth": "20 in", "ditchBottom": "2 ft", "backslope": "2.5:1",
                    "cutSlope": "3:1"
                  },
                  "strip": false,
                  "topsoilBack": "3 in",
                  "topsoilInDitch": true,
                  "why": { "width": "the neighbour's baler" }
                }
              ],
              "along": [
                { "from": "start", "to": "3+00", "shape": "lane" },
                { "from": "3+00", "to": "end", "shape": "lane" }
              ],
              "ditchBottoms": [
                { "side": "right", "from": "1+00", "to": "2+00", "fromHeight": "408 ft", "toHeight": "407 ft" }
              ],
              "stone": {
                "loss": "8 %", "payload": "20 t", "raisedBed": "22 ft",
                "materials": [
                  { "role": "surface", "density": "135 lb/ft3", "kind": "screened gravel surfacing", "price": "26.50 per ton" },
                  { "role": "base", "kind": "crushed limestone, dense graded", "gradation": "57", "price": "400 per load", "inHand": "30 tons" }
                ],
                "fabric": true
              },
              "earth": { "topsoil": "from probes", "bearing": "18 in", "soil": "clay", "washes": "easily", "lift": "8 in" },
              "water": {
                "pipes": [
                  {
                    "name": "old clay", "diameter": "12 in",
                    "inlet": { "east": "300 ft", "north": "220 ft", "invert": "405 ft" },
                    "outlet": { "east": "300 ft", "north": "180 ft", "invert": "404.5 ft" }
                  },
                  {
                    "name": "new one", "diameter": "18 in", "state": "to lay",
                    "material": "plastic", "tailwater": "6 in", "ends": "mitred",
                    "inlet": { "east": "400 ft", "north": "220 ft", "invert": "405 ft" },
                    "outlet": { "east": "400 ft", "north": "180 ft", "invert": "404.5 ft" }
                  }
                ],
                "flowArea": "1 acre", "spotDepth": "3 in", "spotArea": "30 ft2",
                "pipeWork": {
                  "sideRoom": "10 in", "bedding": "4 in", "soldBy": "20 ft", "beyond": "1 ft",
                  "axle": "12 tons", "beddingKind": "screened gravel surfacing",
                  "riprapKind": "riprap, as laid", "trenchPerHour": "15 yd3",
                  "prices": [
                    { "size": "18 in", "price": "21.50 per ft" },
                    { "size": "21 in", "rise": "15 in", "material": "metal", "price": "30 per ft" }
                  ],
                  "beddingPrice": "22.00 per ton", "riprapPrice": "41.00 per ton",
                  "fabricPrice": "2.10 per yd2", "trenchPrice": "95.00 per h",
                  "headwallPrice": "450.00 per piece"
                },
                "rain": {
                  "years": "10", "periods": ["2", "10"],
                  "table": [
                    { "lasts": "5 min", "rain": ["5.18 in/h", "7.14 in/h"] },
                    { "lasts": "1 h", "rain": ["1.51 in", "57.658 mm"] }
                  ],
                  "lands": [
                    { "land": "pasture, fair", "soil": "c", "share": "70 %" },
                    { "land": "woods, good", "soil": "b", "share": "30 %" }
                  ]
                },
                "outlets": [
                  { "name": "gully", "station": "1+50", "side": "right", "permitted": "yes" },
                  { "name": "brook", "east": "300 ft", "north": "180 ft" },
                  { "name": "pond", "longitude": "-86.5°", "latitude": "39.2° N", "permitted": "no" }
                ],
                "berms": [ { "from": "1+00", "to": "end", "side": "left", "height": "4 in" } ]
              },
              "hazards": {
                "wires": [ { "name": "line", "clearance": "18 ft", "points": [ { "east": "0 ft", "north": "0 ft" }, { "east": "1 ft", "north": "400 ft" } ] } ],
                "buried": [ { "name": "water", "owner": "private", "depth": "3 ft", "points": [ { "east": "0 ft", "north": "0 ft" }, { "east": "1 ft", "north": "400 ft" } ] } ],
                "keepOff": [ { "name": "well", "kind": "well", "radius": "2 ft", "away": "50 ft", "outline": [ { "east": "250 ft", "north": "260 ft" } ] } ]
              },
              "work": { "margin": "2 ft", "interval": "50 ft", "stakesBeyond": "4 ft", "instrumentHeight": "418.33 ft", "heaps": [ { "name": "by the oak", "east": "250 ft", "north": "280 ft" }, { "longitude": "-86.5°", "latitude": "39.2° N" } ] }
            }
            """;

    static PlanFile read(String json) throws PlanException {
        return PlanFile.read("plan.json", json.getBytes(StandardCharsets.UTF_8));
    }
}
