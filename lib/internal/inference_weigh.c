/* SPDX-License-Identifier: MIT */
#include "internal/inference_weights.h"

enum { freedom = 20 };
/* beyond this a temperature that a fault makes is no less certain */
static const double most_shift_k = 200.0;

static double log_wide(const freeair__symptoms *s, int block, const double *r)
{
  double sum = 0.0;
  for (int i = s->blocks.first[block]; i < s->blocks.first[block + 1]; i++) {
    /* Student's t of 3 degrees of freedom */
    double u2 = s->symptom[i].wide * s->symptom[i].wide;
    sum -= log(2.7206990463513268 * s->symptom[i].wide) + 2.0 * log1p(r[i] * r[i] / (3.0 * u2));
  }
  return sum;
}

int freeair__weigh(const freeair__symptoms *s, const freeair__covariance *unknown, const double *y,
                   const freeair__doubt *doubt, double form, freeair__weighed *out)
{
  double c[FREEAIR__SYMPTOMS][FREEAIR__SYMPTOMS];
  double r[FREEAIR__SYMPTOMS];
  double gain[FREEAIR__SYMPTOMS];
  double u[FREEAIR__SYMPTOMS];
  freeair__gauss_density d;
  for (int i = 0; i < s->n; i++) {
    r[i] = s->symptom[i].found - y[i];
    gain[i] = freeair__symptoms_gain(s, i, y[i]);
    for (int j = 0; j <= i; j++) {
      c[i][j] = unknown->c[i][j] * gain[i] * gain[j];
      for (int k = 0; k < doubt->n; k++) c[i][j] += doubt->by[k][i] * doubt->by[k][j];
    }
    double shift = y[i] - s->sound[i];
    if (s->symptom[i].kind == FREEAIR__SYMPTOM_DIFFERENCE) shift = fmin(fmax(shift, -most_shift_k), most_shift_k);
    u[i] = form * s->symptom[i].form * shift;
    for (int j = 0; j < i; j++) c[i][j] += u[i] * u[j] * s->shared[i][j];
    c[i][i] += doubt->variance[i] + u[i] * u[i] + s->symptom[i].noise * s->symptom[i].noise;
  }
  if (!freeair__gauss_student(c, r, s->n, freedom, &s->blocks, &d)) return 0;
  double wrong[FREEAIR__GAUSS_BLOCKS];
  double sum = 1.0;
  for (int b = 0; b < s->blocks.n; b++) {
    /* the constant of so many dimensions less was left out of both densities */
    wrong[b] = FREEAIR__WRONG_SHARE * exp(fmin(log_wide(s, b, r) + d.without[b] - d.all, 300.0));
    sum += wrong[b];
  }
  out->all = d.all + log(sum);
  out->square = d.square;
  for (int b = 0; b < s->blocks.n; b++) {
    out->without[b] = d.without[b] + log(fmax(sum - wrong[b], 1.0));
    out->below[b] = 0.5 * erfc(-d.residual[b] * 0.70710678118654752440);
    out->wrong[b] = d.all + log(wrong[b]);
    out->mean[b] = s->symptom[s->blocks.first[b]].found - d.shift[b];
  }
  return 1;
}
