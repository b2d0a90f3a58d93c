package org.tallywall.experiments.story;

import org.tallywall.core.record.GameEvent;

/**
 * Whether an event of play begins a sentence of its own.
 *
 * @param onTurn of whom the sentence before speaks, or -1
 */
record TurnBegins(int onTurn) implements GameEvent.Cases<Boolean> {
  @Override
  public Boolean pass(GameEvent.Pass pass) {
    return false;
  }

  @Override
  public Boolean stop(GameEvent.Stop stop) {
    return false;
  }

  @Override
  public Boolean courtesy(GameEvent.Courtesy courtesy) {
    return false;
  }

  @Override
  public Boolean draw(GameEvent.Draw draw) {
    return true;
  }

  @Override
  public Boolean exchange(GameEvent.Exchange exchange) {
    return false;
  }

  @Override
  public Boolean discard(GameEvent.Discard discard) {
    return false;
  }

  @Override
  public Boolean claim(GameEvent.Claim claim) {
    return true;
  }

  @Override
  public Boolean dead(GameEvent.Dead dead) {
    return false;
  }

  @Override
  public Boolean mahjong(GameEvent.Mahjong mahjong) {
    return mahjong.seat() != onTurn;
  }

  @Override
  public Boolean wallGame(GameEvent.WallGame wallGame) {
    return true;
  }

  @Override
  public Boolean voidGame(GameEvent.VoidGame voidGame) {
    return true;
  }
}
