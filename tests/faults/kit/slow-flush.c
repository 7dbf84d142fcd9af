/*
 * Makes every flush to the disk take longer, for a program that it is preloaded into. A killed program
 * loses nothing that it has handed to the system, flushed or not: only the time that a flush takes tells
 * whether somebody waited for it.
 *
 * SLOW_FLUSH_MS: how much longer, milliseconds; nothing is slowed without it.
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <stdlib.h>
#include <time.h>

typedef int (*flush_call)(int);

static void wait_as_told(void) {
  const char *told = getenv("SLOW_FLUSH_MS");
  long ms = told == NULL ? 0 : strtol(told, NULL, 10);
  struct timespec rest = {ms / 1000, (ms % 1000) * 1000000L};
  if (ms <= 0) return;
  while (nanosleep(&rest, &rest) == -1 && errno == EINTR) {
  }
}

int fsync(int file) {
  flush_call next = (flush_call)dlsym(RTLD_NEXT, "fsync");
  wait_as_told();
  return next(file);
}

int fdatasync(int file) {
  flush_call next = (flush_call)dlsym(RTLD_NEXT, "fdatasync");
  wait_as_told();
  return next(file);
}
