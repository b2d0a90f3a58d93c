package org.tallywall.experiments.school;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Hands decisions over in the order of their numbers, whatever the order in which they come. */
final class InOrder implements Consumer<Judged> {
  private final Consumer<Judged> listener;
  private final Map<Integer, Judged> early = new TreeMap<>();
  private int next;

  InOrder(int first, Consumer<Judged> listener) {
    this.next = first;
    this.listener = listener;
  }

  @Override
  public synchronized void accept(Judged one) {
    early.put(one.number(), one);
    for (Judged due = early.remove(next); due != null; due = early.remove(next)) {
      next++;
      listener.accept(due);
    }
  }
}
