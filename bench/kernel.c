/* The three-store kernel of src/kernel.ts, line by line in C: battery, gas and cabin heat of n lives.
   Reads nothing; prints the seconds that `repeats` runs took and the final levels in full precision. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static double seconds(void) {
  struct timespec now;
  clock_gettime(CLOCK_MONOTONIC, &now);
  return (double)now.tv_sec + 1e-9 * (double)now.tv_nsec;
}

static void live(int n, int steps, double *battery, double *gas, double *heat, const double *habit) {
  const double dt = 0.25, capacity = 250, conductance = 60, full = 4000, usable = 570, cylinders = 12;
  const double decay = exp(-conductance * dt / capacity);
  for (int i = 0; i < n; i++) {
    battery[i] = usable;
    gas[i] = cylinders;
    heat[i] = capacity * 55;
  }
  for (int step = 0; step < steps; step++) {
    const double clock = (step % 96) * dt;
    const double outside = 3 - 5 * cos((clock - 3) * 3.141592653589793 / 12);
    const double target = clock >= 7 && clock < 23 ? 19 : 14;
    const double sun = clock > 9 && clock < 16 ? 30 : 0;
    for (int i = 0; i < n; i++) {
      const double cabin = heat[i] / capacity - 40;
      /* the panel, as far as the battery has room */
      const double room = usable - battery[i];
      const double charge = sun * dt < room ? sun * dt : room;
      battery[i] += charge;
      /* lights and small consumers */
      const double lights = (clock >= 17 ? 15 : 2) * habit[i] * dt;
      battery[i] -= lights < battery[i] ? lights : battery[i];
      /* the heater: gas and 12 V to cabin heat by one activity */
      double wanted = ((target - outside - (cabin - outside) * decay) / (1 - decay)) * conductance * dt;
      if (wanted < 0) wanted = 0;
      double activity = wanted / (full * dt);
      if (activity > 1) activity = 1;
      const double needGas = full * dt / (12.87 * 1000 * 0.9);
      const double needFan = 18 * dt;
      if (activity * needGas > gas[i]) activity = gas[i] / needGas;
      if (activity * needFan > battery[i]) activity = battery[i] / needFan;
      gas[i] -= activity * needGas;
      battery[i] -= activity * needFan;
      const double gain = activity * full * dt + 100 * dt;
      const double settled = outside + gain / (dt * conductance);
      heat[i] = (settled + (cabin - settled) * decay + 40) * capacity;
    }
  }
}

int main(int argc, char **argv) {
  const int n = argc > 1 ? atoi(argv[1]) : 500;
  const int steps = argc > 2 ? atoi(argv[2]) : 1344;
  const int repeats = argc > 3 ? atoi(argv[3]) : 20;
  double *battery = malloc(sizeof(double) * (size_t)n), *gas = malloc(sizeof(double) * (size_t)n);
  double *heat = malloc(sizeof(double) * (size_t)n), *habit = malloc(sizeof(double) * (size_t)n);
  if (!battery || !gas || !heat || !habit) return 1;
  for (int i = 0; i < n; i++) habit[i] = 0.5 + (double)i / n;
  double best = 1e9;
  for (int r = 0; r < repeats; r++) {
    const double from = seconds();
    live(n, steps, battery, gas, heat, habit);
    const double took = seconds() - from;
    if (took < best) best = took;
  }
  printf("%.9f\n", best);
  for (int i = 0; i < n; i++) printf("%.17g %.17g %.17g\n", battery[i], gas[i], heat[i]);
  return 0;
}
