package org.tallywall.core.record;

import java.util.List;

/**
 * One thing that happened at the table, as a record writes it. Seats are 0 to 3, tiles are kinds.
 *
 * <p>Whoever treats events of several kinds does so in {@link Cases} or {@link Taker}, so that the
 * compiler names every place that a new kind of event has to be added to.
 */
public sealed interface GameEvent {
  /**
   * What follows from an event of each kind.
   *
   * @param <R> what follows
   */
  interface Cases<R> {
    /**
     * What follows from one player's part of a pass.
     *
     * @param pass the event
     * @return what follows
     */
    R pass(Pass pass);

    /**
     * What follows from the stop question.
     *
     * @param stop the event
     * @return what follows
     */
    R stop(Stop stop);

    /**
     * What follows from a courtesy pass.
     *
     * @param courtesy the event
     * @return what follows
     */
    R courtesy(Courtesy courtesy);

    /**
     * What follows from a draw.
     *
     * @param draw the event
     * @return what follows
     */
    R draw(Draw draw);

    /**
     * What follows from a joker exchange.
     *
     * @param exchange the event
     * @return what follows
     */
    R exchange(Exchange exchange);

    /**
     * What follows from a discard.
     *
     * @param discard the event
     * @return what follows
     */
    R discard(Discard discard);

    /**
     * What follows from a claim for an exposure.
     *
     * @param claim the event
     * @return what follows
     */
    R claim(Claim claim);

    /**
     * What follows from a hand called dead.
     *
     * @param dead the event
     * @return what follows
     */
    R dead(Dead dead);

    /**
     * What follows from mahjong.
     *
     * @param mahjong the event
     * @return what follows
     */
    R mahjong(Mahjong mahjong);

    /**
     * What follows from the end of the wall.
     *
     * @param wallGame the event
     * @return what follows
     */
    R wallGame(WallGame wallGame);

    /**
     * What follows from three dead hands.
     *
     * @param voidGame the event
     * @return what follows
     */
    R voidGame(VoidGame voidGame);
  }

  /** Takes events of each kind. */
  interface Taker {
    /**
     * Takes one player's part of a pass.
     *
     * @param pass the event
     */
    void pass(Pass pass);

    /**
     * Takes the stop question.
     *
     * @param stop the event
     */
    void stop(Stop stop);

    /**
     * Takes a courtesy pass.
     *
     * @param courtesy the event
     */
    void courtesy(Courtesy courtesy);

    /**
     * Takes a draw.
     *
     * @param draw the event
     */
    void draw(Draw draw);

    /**
     * Takes a joker exchange.
     *
     * @param exchange the event
     */
    void exchange(Exchange exchange);

    /**
     * Takes a discard.
     *
     * @param discard the event
     */
    void discard(Discard discard);

    /**
     * Takes a claim for an exposure.
     *
     * @param claim the event
     */
    void claim(Claim claim);

    /**
     * Takes a hand called dead.
     *
     * @param dead the event
     */
    void dead(Dead dead);

    /**
     * Takes mahjong.
     *
     * @param mahjong the event
     */
    void mahjong(Mahjong mahjong);

    /**
     * Takes the end of the wall.
     *
     * @param wallGame the event
     */
    void wallGame(WallGame wallGame);

    /**
     * Takes three dead hands.
     *
     * @param voidGame the event
     */
    void voidGame(VoidGame voidGame);
  }

  /**
   * What follows from this event.
   *
   * @param cases what follows from each kind
   * @param <R> what follows
   * @return what follows from this kind
   */
  <R> R match(Cases<R> cases);

  /**
   * Hands the event over.
   *
   * @param taker who takes it
   */
  void give(Taker taker);

  /**
   * One player's part of a pass.
   *
   * @param step the pass, as in right-1
   * @param from who passed
   * @param to who received
   * @param own kinds set out from the passer's rack
   * @param forwarded kinds that went on unseen
   */
  record Pass(String step, int from, int to, List<Integer> own, List<Integer> forwarded)
      implements GameEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.pass(this);
    }

    @Override
    public void give(Taker taker) {
      taker.pass(this);
    }
  }

  /**
   * The stop question.
   *
   * @param seats all who stopped, ascending
   */
  record Stop(List<Integer> seats) implements GameEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.stop(this);
    }

    @Override
    public void give(Taker taker) {
      taker.stop(this);
    }
  }

  /**
   * The courtesy pass of two opposite seats.
   *
   * @param seats the two seats
   * @param asked the two numbers
   * @param tiles what each gave
   */
  record Courtesy(List<Integer> seats, List<Integer> asked, List<List<Integer>> tiles)
      implements GameEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.courtesy(this);
    }

    @Override
    public void give(Taker taker) {
      taker.courtesy(this);
    }
  }

  /**
   * A draw.
   *
   * @param seat who drew
   * @param tile the tile
   */
  record Draw(int seat, int tile) implements GameEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.draw(this);
    }

    @Override
    public void give(Taker taker) {
      taker.draw(this);
    }
  }

  /**
   * A joker exchange.
   *
   * @param seat who redeemed
   * @param owner whose exposure
   * @param exposure which of the owner's exposures, from 0
   * @param tile the natural given
   */
  record Exchange(int seat, int owner, int exposure, int tile) implements GameEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.exchange(this);
    }

    @Override
    public void give(Taker taker) {
      taker.exchange(this);
    }
  }

  /**
   * A discard.
   *
   * @param seat who threw it
   * @param tile the tile
   */
  record Discard(int seat, int tile) implements GameEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.discard(this);
    }

    @Override
    public void give(Taker taker) {
      taker.discard(this);
    }
  }

  /**
   * A claim for an exposure.
   *
   * @param seat who got the tile
   * @param from who threw it
   * @param tile the tile
   * @param kind the kind shown; differs from the tile only where a joker was claimed
   * @param size number of tiles of the group
   * @param jokers jokers from the claimant's rack
   * @param losers whose claims lost
   */
  record Claim(int seat, int from, int tile, int kind, int size, int jokers, Losers losers)
      implements GameEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.claim(this);
    }

    @Override
    public void give(Taker taker) {
      taker.claim(this);
    }
  }

  /**
   * A hand called dead.
   *
   * @param seat whose
   */
  record Dead(int seat) implements GameEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.dead(this);
    }

    @Override
    public void give(Taker taker) {
      taker.dead(this);
    }
  }

  /**
   * Mahjong.
   *
   * @param seat who won
   * @param by how, as in draw
   * @param from who threw the winning tile, or -1
   * @param losers whose claims lost
   */
  record Mahjong(int seat, String by, int from, Losers losers) implements GameEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.mahjong(this);
    }

    @Override
    public void give(Taker taker) {
      taker.mahjong(this);
    }
  }

  /** The wall ran out. */
  record WallGame() implements GameEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.wallGame(this);
    }

    @Override
    public void give(Taker taker) {
      taker.wallGame(this);
    }
  }

  /** Three hands were dead. */
  record VoidGame() implements GameEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.voidGame(this);
    }

    @Override
    public void give(Taker taker) {
      taker.voidGame(this);
    }
  }

  /**
   * Whose claims of a tile lost.
   *
   * @param exposures seats whose exposure claim lost, ascending
   * @param mahjongs seats whose mahjong claim lost, ascending
   */
  record Losers(List<Integer> exposures, List<Integer> mahjongs) {
    /** Nobody's. */
    static final Losers NOBODY = new Losers(List.of(), List.of());
  }
}
