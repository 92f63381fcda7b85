package io.github.swatchwright.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class ControlTest {
  @Test
  void plainWorkGoesOn() {
    assertThat(Control.PLAIN.isCancelled()).isFalse();
    Control.PLAIN.requireGoingOn();
    assertThat(Control.PLAIN.started().isCancelled()).isFalse();
  }

  @Test
  void theConditionStopsIt() {
    Control control = Control.PLAIN.withCancelled(() -> true);
    assertThat(control.isCancelled()).isTrue();
    assertThat(control.started().isCancelled()).isTrue();
    assertThatThrownBy(control::requireGoingOn)
        .isInstanceOf(CancellationException.class)
        .hasMessage("stopped before it was complete");
  }

  @Test
  void anInterruptStopsItAndIsNotForgotten() {
    Thread.currentThread().interrupt();
    assertThat(Control.PLAIN.isCancelled()).isTrue();
    assertThat(Thread.interrupted()).isTrue();
    assertThat(Control.PLAIN.isCancelled()).isFalse();
  }

  @Test
  void theClockRunsFromTheStart() throws InterruptedException {
    Control soon = Control.PLAIN.withLongest(Duration.ofMillis(1));
    Thread.sleep(5);
    assertThat(soon.isCancelled()).isFalse();
    Control running = soon.started();
    Thread.sleep(5);
    assertThat(running.isCancelled()).isTrue();
    assertThat(Control.PLAIN.withLongest(Duration.ofMinutes(1)).started().isCancelled()).isFalse();
  }

  @Test
  void eachPartIsChangedAlone() {
    Duration second = Duration.ofSeconds(1);
    BooleanSupplier yes = () -> true;
    Progress heard = share -> {};
    Control all =
        Control.PLAIN.withThreads(3).withLongest(second).withCancelled(yes).withProgress(heard);
    assertThat(all).isEqualTo(new Control(3, second, yes, heard));
    assertThat(Control.PLAIN.withLongest(Duration.ofDays(9999)).longest())
        .isEqualTo(Control.UNLIMITED);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Control.PLAIN.withThreads(257))
        .withMessage("threads is 257, must be within [1, 256]");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Control.PLAIN.withLongest(second.negated()))
        .withMessage("longest is PT-1S, must be 0 or more");
  }

  @Test
  void workIsDoneOnAsManyThreadsOfItsOwn() {
    int threads =
        Control.PLAIN
            .withThreads(3)
            .onOwnThreads(inside -> ForkJoinTask.getPool().getParallelism());
    assertThat(threads).isEqualTo(3);
    assertThat(Control.PLAIN.<Thread>onOwnThreads(inside -> Thread.currentThread()))
        .isNotSameAs(Thread.currentThread());
  }

  @Test
  void itsThreadsEndWithIt() throws InterruptedException {
    Thread worker = Control.PLAIN.onOwnThreads(inside -> Thread.currentThread());
    worker.join(TimeUnit.SECONDS.toMillis(10));
    assertThat(worker.isAlive()).isFalse();
  }

  @Test
  void progressIsHeardUntilTheCallerIsGone() {
    List<Double> heard = Collections.synchronizedList(new ArrayList<>());
    Control inside =
        Control.PLAIN
            .withProgress(heard::add)
            .onOwnThreads(
                own -> {
                  own.progress().reached(0.5);
                  assertThat(own.isCancelled()).isFalse();
                  return own;
                });
    assertThat(inside.isCancelled()).isTrue();
    inside.progress().reached(1);
    assertThat(heard).containsExactly(0.5);
  }

  @Test
  void whatTheWorkThrowsComesOutAsItIs() {
    IllegalArgumentException refusal = new IllegalArgumentException("no");
    assertThatThrownBy(() -> Control.PLAIN.onOwnThreads(inside -> fail(refusal))).isSameAs(refusal);
    StackOverflowError error = new StackOverflowError();
    assertThatThrownBy(() -> Control.PLAIN.onOwnThreads(inside -> fail(error))).isSameAs(error);
  }

  private static Object fail(Throwable failure) {
    if (failure instanceof Error error) {
      throw error;
    }
    throw (RuntimeException) failure;
  }

  @Test
  void theCallerReturnsThoughTheWorkHangs() {
    CountDownLatch end = new CountDownLatch(1);
    Control control = Control.PLAIN.withLongest(Duration.ofMillis(30));
    assertThatThrownBy(() -> control.onOwnThreads(inside -> waitFor(end)))
        .isInstanceOf(CancellationException.class)
        .hasMessage("stopped before it was complete");
    end.countDown();
  }

  @Test
  void theWorkItselfLearnsThatTimeIsUp() throws InterruptedException {
    AtomicBoolean learned = new AtomicBoolean();
    CountDownLatch end = new CountDownLatch(1);
    Control control = Control.PLAIN.withLongest(Duration.ofMillis(30));
    assertThatThrownBy(
            () ->
                control.onOwnThreads(
                    inside -> {
                      while (!inside.isCancelled()) {
                        Thread.onSpinWait();
                      }
                      learned.set(true);
                      end.countDown();
                      return waitFor(new CountDownLatch(1));
                    }))
        .isInstanceOf(CancellationException.class);
    assertThat(end.await(10, TimeUnit.SECONDS)).isTrue();
    assertThat(learned).isTrue();
  }

  @Test
  void anInterruptedCallerStaysInterrupted() throws InterruptedException {
    AtomicReference<Thread> caller = new AtomicReference<>();
    AtomicBoolean asWanted = new AtomicBoolean();
    CountDownLatch end = new CountDownLatch(1);
    Thread thread =
        new Thread(
            () -> {
              try {
                Control.PLAIN.onOwnThreads(
                    inside -> {
                      Objects.requireNonNull(caller.get()).interrupt();
                      return waitFor(end);
                    });
              } catch (CancellationException e) {
                asWanted.set(Thread.currentThread().isInterrupted());
              }
            });
    caller.set(thread);
    thread.start();
    thread.join();
    end.countDown();
    assertThat(asWanted).isTrue();
  }

  private static boolean waitFor(CountDownLatch end) {
    try {
      return end.await(10, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
