/* SPDX-License-Identifier: MIT */
#include "dice.h"

#include <math.h>

static const double tau = 6.28318530717958647693;

/* A shift-register generator with a multiplied output (xorshift64*), to 53 bits. */
static double roll(dice *d)
{
  d->state ^= d->state >> 12;
  d->state ^= d->state << 25;
  d->state ^= d->state >> 27;
  return (double)((d->state * 2685821657736338717u) >> 11) / 9007199254740992.0;
}

dice dice_for(uint64_t series, uint64_t visit)
{
  dice d = {(series * 1000003u + visit * 7919u + 17u) * 0x9e3779b97f4a7c15u};
  for (int i = 0; i < 20; i++) roll(&d); /* neighbouring seeds begin alike */
  return d;
}

double dice_uniform(dice *d, double lo, double hi)
{
  return lo + (hi - lo) * roll(d);
}

double dice_log_uniform(dice *d, double lo, double hi)
{
  return lo * pow(hi / lo, roll(d));
}

double dice_normal(dice *d, double sd)
{
  double u = roll(d);
  double v = roll(d);
  return sd * sqrt(-2.0 * log(fmax(u, 1e-300))) * cos(tau * v);
}

double dice_factor(dice *d, double relative_sd)
{
  return exp(dice_normal(d, relative_sd));
}

int dice_chance(dice *d, double probability)
{
  return roll(d) < probability;
}
