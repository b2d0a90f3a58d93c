package org.tallywall.experiments.attack;

import java.util.Map;

/** A small card and a study of every design on it, each played in a moment. */
final class TinyStudies {
  static final String CARD =
      """
      { "card": "Saltmarsh test card", "edition": "for attacks",
        "families": [
          { "family": "Ladders", "lines": [
            { "tiles": "2222x 33y 444x 555z 66y", "slide": "any", "value": 30, "say": "the pier" },
            { "tiles": ["FF 333x 4444x 555y 66y", "FF 333x 4444y 555x 66x"], "value": 25 } ] },
          { "family": "Vanes", "lines": [
            { "id": "V1", "tiles": "NNNN EEE (WWWW|SSSS) RRR", "value": 30 },
            { "tiles": "FF nnnx mmmy 10z DDDDx", "where": "nm: 19 28 37", "suits": "or one",
              "value": 35, "concealed": true } ] },
          { "family": "Couples", "lines": [
            { "tiles": "11x 33x 55x 77x 99x NN SS", "value": 50, "concealed": true,
              "jokers": false, "jokerless": false } ] } ] }
      """;

  static final String CSV =
      """
      family,id,tiles,slide,where,suits,value,concealed,jokers,jokerless,say
      Ladders,,2222x 33y 444x 555z 66y,any,,,30,,,,the pier
      Ladders,L2,FF 333x 4444x 555y 66y|FF 333x 4444y 555x 66x,,,,25,C,TRUE,no,"a ""b\"""
      Vanes,V1,NNNN EEE (WWWW|SSSS) RRR,,,,30,,,,
      Vanes,,FF nnnx mmmy 10z DDDDx,,"nm: 19,28",or one,35,X,yes,,
      Couples,,11x 33x 55x 77x 99x NN SS,,,,50,X,no,,
      """;

  static final String RULES =
      """
      { "wall.cold": "NO_CLAIM", "wall.hot": "PAY_ALL_IF_UNACCOUNTED", "wall.finalDiscard.claim": "ANY", "score.discarder": 3,
        "score.selfDrawn": 1, "joker.exchange": "ON", "win.mayDecline": false }
      """;

  static final String PLAYER =
      """
      { "player": "watchful", "aim": { "targets": 2, "haste": 0.4 },
        "defense": { "hold-back": { "exposures-on-one-rack": 2, "away-at-least": 3 } } }
      """;

  static final String RACKS =
      """
      113b 22c 57d NN RG0 FF
      113b 99d S FF RG / 333cJ
      55d EE SS 1234b FF JJ
      """;

  /** The studies by their designs. */
  static final Map<String, String> STUDIES =
      Map.of(
          "table",
          """
          { "study": "quay", "question": "Where do games go?", "card": "card.json", "seed": 5,
            "table": ["nearest", "random-legal", "nearest", "nearest"], "show": "seats",
            "deals": 3, "records": 2, "confidence": 0.95, "failed-deals-allowed": 1 }
          """,
          "arms",
          """
          { "study": "arms", "question": "Does it help to hold back?", "card": "card.json",
            "seed": 5, "arms": { "never": "nearest",
              "hold-back": { "player": "reckoner", "defense": { "hold-back": true } } },
            "baseline": "never", "others": "nearest", "primary": "points", "seats": "rotate",
            "secondary": ["win-rate", "wall-games"], "deals": 3, "records": 1,
            "decision-seconds": 10 }
          """,
          "sweep",
          """
          { "study": "sweep", "card": "card.json", "seed": 5,
            "sweep": { "player": "reckoner", "setting": "aim.targets", "values": [1, 2, 4],
                       "baseline": 4 },
            "others": "nearest", "seats": 1, "primary": "win-rate", "deals": 3 }
          """,
          "round-robin",
          """
          { "study": "round", "card": "card.json", "seed": 5, "deals": 6, "records": 1,
            "round-robin": { "a": "nearest", "b": "newcomer", "c": "nearest",
                             "d": "random-legal" } }
          """,
          "branch",
          """
          { "study": "branch", "card": "card.json", "seed": 5, "deals": 4, "records": 1,
            "branch": { "at": "discard", "options": ["own-need", "safest"], "player": "watchful",
                        "when": { "exposures-on-one-rack": [1, 2], "wall": [90, 60] } },
            "primary": "points" }
          """,
          "until",
          """
          { "study": "until", "card": "card.json", "seed": 5, "rules": { "score.discarder": 3 },
            "arms": { "clumsy": "random-legal", "nearest": "nearest" }, "baseline": "clumsy",
            "others": "random-legal", "primary": "win-rate", "seats": 0,
            "until": { "rule": "sprt", "difference": 0.2, "expected-discordance": 0.5,
                       "at-most": 20, "false-alarm": 0.05, "miss": 0.1 } }
          """);

  private TinyStudies() {}
}
