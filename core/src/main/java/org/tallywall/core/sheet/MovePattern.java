package org.tallywall.core.sheet;

import java.util.List;

/** A move as a sheet describes it: one answer, or any of several. */
sealed interface MovePattern {
  /** Any number, seat or tile. */
  int ANY = -1;

  /** Whether a move is one of those described. */
  boolean matches(Move move);

  /** The move where only one can be meant, else null. */
  default Move only() {
    return null;
  }

  /** Exactly these tiles and so many blind. */
  record Pass(Move.Pass pass) implements MovePattern {
    @Override
    public Move only() {
      return pass;
    }

    @Override
    public boolean matches(Move move) {
      return pass.equals(move);
    }
  }

  /** A pass that holds one of these. */
  record PassWithAny(List<Integer> kinds) implements MovePattern {
    @Override
    public boolean matches(Move move) {
      return move instanceof Move.Pass pass && pass.own().stream().anyMatch(kinds::contains);
    }
  }

  /** One plain answer. */
  record Exactly(Move wanted) implements MovePattern {
    @Override
    public Move only() {
      return wanted;
    }

    @Override
    public boolean matches(Move move) {
      return wanted.equals(move);
    }
  }

  /** An exposure of so many tiles with so many jokers. */
  record Claim(int size, int jokers) implements MovePattern {
    @Override
    public Move only() {
      return size == ANY || jokers == ANY ? null : new Move.Claim(size, jokers);
    }

    @Override
    public boolean matches(Move move) {
      return move instanceof Move.Claim claim
          && (size == ANY || size == claim.size())
          && (jokers == ANY || jokers == claim.jokers());
    }
  }

  /** A joker redeemed with this tile, from this seat. */
  record Exchange(int tile, int owner) implements MovePattern {
    @Override
    public Move only() {
      return tile == ANY || owner == ANY ? null : new Move.Exchange(tile, owner);
    }

    @Override
    public boolean matches(Move move) {
      return move instanceof Move.Exchange exchange
          && (tile == ANY || tile == exchange.tile())
          && (owner == ANY || owner == exchange.owner());
    }
  }

  /** Any discard. */
  record AnyDiscard() implements MovePattern {
    @Override
    public boolean matches(Move move) {
      return move instanceof Move.Discard;
    }
  }

  /** One of these discards. */
  record Discard(List<Integer> kinds) implements MovePattern {
    @Override
    public Move only() {
      return kinds.size() == 1 ? new Move.Discard(kinds.get(0)) : null;
    }

    @Override
    public boolean matches(Move move) {
      return move instanceof Move.Discard discard && kinds.contains(discard.tile());
    }
  }
}
