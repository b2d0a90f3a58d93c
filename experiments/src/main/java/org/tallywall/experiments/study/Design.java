package org.tallywall.experiments.study;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tallywall.strategies.catalog.PlayerSpec;

/** How the games of a study are laid out. */
public sealed interface Design {
  /**
   * All who play.
   *
   * @return every player that the study names
   */
  List<PlayerSpec> seated();

  /** The studied player takes each seat of every deal. */
  List<Integer> ROTATE = IntStream.range(0, 4).boxed().toList();

  /**
   * One fixed table, to see how lines and endings fall: one game a deal.
   *
   * @param players four players, East first
   */
  record Table(List<PlayerSpec> players) implements Design {
    /**
     * Copies the players.
     *
     * @param players four players
     * @throws IllegalArgumentException if there are not four
     */
    public Table {
      players = List.copyOf(players);
      if (players.size() != 4) {
        throw new IllegalArgumentException("four players sit at a table, not " + players.size());
      }
    }

    @Override
    public List<PlayerSpec> seated() {
      return players;
    }
  }

  /** A design that compares ways of playing on the same deals. */
  sealed interface Comparison extends Design permits Arms, Sweep {
    /**
     * What is compared.
     *
     * @return the ways of playing, their baseline and who sits with them
     */
    Arms ways();
  }

  /**
   * Several ways of playing in the same seats on the same deals, each compared with one of them.
   *
   * @param arms the ways of playing, two or more
   * @param baseline which of them the others are compared with, from 0
   * @param others who sits in the other seats
   * @param seats where the studied player sits, in each deal, one after the other
   * @param streams whether the ways share the luck of their decisions
   */
  record Arms(List<Arm> arms, int baseline, PlayerSpec others, List<Integer> seats, Streams streams)
      implements Comparison {
    /**
     * Copies the lists.
     *
     * @param arms the ways of playing
     * @param baseline which of them the others are compared with
     * @param others who sits in the other seats
     * @param seats where the studied player sits
     * @param streams whether the ways share their luck
     */
    public Arms {
      arms = List.copyOf(arms);
      seats = List.copyOf(seats);
    }

    @Override
    public Arms ways() {
      return this;
    }

    @Override
    public List<PlayerSpec> seated() {
      return Stream.concat(arms.stream().map(Arm::player), Stream.of(others)).toList();
    }
  }

  /**
   * One setting at several values, each a way of playing.
   *
   * @param player the player whose setting it is
   * @param setting the setting's full name
   * @param values its values, in the order of the ways of playing
   * @param arms the ways of playing
   */
  record Sweep(PlayerSpec player, String setting, List<Object> values, Arms arms)
      implements Comparison {
    /**
     * Copies the values.
     *
     * @param player the player whose setting it is
     * @param setting the setting's full name
     * @param values its values
     * @param arms the ways of playing
     */
    public Sweep {
      values = List.copyOf(values);
    }

    @Override
    public Arms ways() {
      return arms;
    }

    @Override
    public List<PlayerSpec> seated() {
      return Stream.concat(Stream.of(player), arms.seated().stream()).toList();
    }
  }

  /**
   * Everyone against everyone, four at a table.
   *
   * @param players four or more
   */
  record RoundRobin(List<Arm> players) implements Design {
    /**
     * Copies the players.
     *
     * @param players four or more
     */
    public RoundRobin {
      players = List.copyOf(players);
    }

    @Override
    public List<PlayerSpec> seated() {
      return players.stream().map(Arm::player).toList();
    }
  }

  /**
   * Plays to a decision and takes each option there on the same hidden tiles.
   *
   * @param moment the kind of decision
   * @param cells how positions are sorted; the first decision that fits a square counts
   * @param line the id of a line; where given, only decisions count at which the studied player
   *     aims at it
   * @param options what is tried, two or more; the others are compared with the first
   * @param player the studied player
   * @param others who sits in the other seats
   * @param seats where the studied player sits
   */
  record Branch(
      Moment moment,
      Cells cells,
      Optional<String> line,
      List<BranchOption> options,
      PlayerSpec player,
      PlayerSpec others,
      List<Integer> seats)
      implements Design {
    /**
     * Copies the lists.
     *
     * @param moment the kind of decision
     * @param cells how positions are sorted
     * @param line the id of a line
     * @param options what is tried
     * @param player the studied player
     * @param others who sits in the other seats
     * @param seats where the studied player sits
     */
    public Branch {
      options = List.copyOf(options);
      seats = List.copyOf(seats);
    }

    @Override
    public List<PlayerSpec> seated() {
      return List.of(player, others);
    }
  }
}
