/* SPDX-License-Identifier: MIT */
#include <freeair/evidence.h>
#include <freeair/evidence_readings.h>
#include <freeair/likelihood.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static int32_t n_causes(void)
{
  return freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CAUSE);
}

START_TEST(priors_make_one)
{
  double sum = 0.0;
  double most = 0.0;
  int32_t commonest = 0;
  for (int32_t c = 1; c < n_causes(); c++) {
    double prior;
    ck_assert_int_eq(freeair_likelihood_prior(c, &prior), FREEAIR_OK);
    ck_assert_double_gt(prior, 0.0);
    sum += prior;
    if (c > FREEAIR_EVIDENCE_OTHER && prior > most) {
      most = prior;
      commonest = c;
    }
  }
  ck_assert_double_eq_tol(sum, 1.0, 1e-12);
  /* common practice: the commonest cause of a unit that does not make pressure */
  ck_assert_int_eq(commonest, FREEAIR_EVIDENCE_LP_SUCTION_VALVE);
}
END_TEST

/* No answer is ever impossible, so that no one observation can settle a case alone. */
START_TEST(rates_are_probabilities)
{
  for (int32_t o = 1; o < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_OBSERVATION); o++) {
    int listed = 0;
    for (int32_t c = 1; c < n_causes(); c++) {
      double hit;
      double false_alarm;
      int32_t basis;
      ck_assert_int_eq(freeair_likelihood_observation(c, o, &hit, &false_alarm, &basis), FREEAIR_OK);
      ck_assert(hit > 0.0 && hit <= 0.95 && false_alarm > 0.0 && false_alarm < 0.5);
      if (basis == FREEAIR_LIKELIHOOD_UNLISTED && c != FREEAIR_EVIDENCE_OTHER) ck_assert_double_eq(hit, false_alarm);
      listed += basis != FREEAIR_LIKELIHOOD_UNLISTED;
    }
    ck_assert_msg(listed > 0, "%s", freeair_evidence_name(FREEAIR_EVIDENCE_KIND_OBSERVATION, o));
  }
}
END_TEST

/* A healthy machine moves nothing; a fault that costs delivery shows in the pump-up test. */
START_TEST(signatures_are_sane)
{
  for (int32_t c = 1; c < n_causes(); c++) {
    double size;
    double cost;
    int32_t two_sided;
    ck_assert_int_eq(freeair_likelihood_size(c, &size, &cost, &two_sided), FREEAIR_OK);
    ck_assert(cost == 0.0 || cost == 1.0);
    int moves = 0;
    for (int32_t r = 1; r < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_READING); r++) {
      double slope;
      double limit;
      double spread;
      int32_t basis;
      ck_assert_int_eq(freeair_likelihood_reading(c, r, &slope, &limit, &spread, &basis), FREEAIR_OK);
      ck_assert(limit >= 0.0 && spread >= 0.0);
      ck_assert_int_eq(slope != 0.0, basis != FREEAIR_LIKELIHOOD_UNLISTED);
      if (slope != 0.0) ck_assert(limit > 0.0 && spread > 0.0);
      moves += slope != 0.0;
      if (r == FREEAIR_EVIDENCE_DELIVERY && cost > 0.0) ck_assert_double_eq(slope, -1.0);
      if (r == FREEAIR_EVIDENCE_TIME_FROM_EMPTY && cost > 0.0) ck_assert_double_gt(slope, 0.0);
    }
    ck_assert_int_eq(moves > 0, size > 0.0);
  }
}
END_TEST

/* Common practice, no source: the interstage reading separates the LP side (down), HP valves (up), slip and leaks
 * downstream (unmoved). */
START_TEST(interstage_separates_the_stages)
{
  const int32_t down[] = {FREEAIR_EVIDENCE_LP_SUCTION_VALVE, FREEAIR_EVIDENCE_LP_DISCHARGE_VALVE,
                          FREEAIR_EVIDENCE_INTAKE_FILTER, FREEAIR_EVIDENCE_INTERSTAGE_LEAK};
  const int32_t up[] = {FREEAIR_EVIDENCE_HP_SUCTION_VALVE, FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE};
  const int32_t unmoved[] = {FREEAIR_EVIDENCE_BELT_SLIP, FREEAIR_EVIDENCE_WRONG_PULLEY, FREEAIR_EVIDENCE_DOWNSTREAM,
                             FREEAIR_EVIDENCE_UNLOADER_LEAK, FREEAIR_EVIDENCE_CHECK_VALVE};
  double slope;
  double limit;
  double spread;
  int32_t basis;
  for (size_t i = 0; i < 4; i++) {
    freeair_likelihood_reading(down[i], FREEAIR_EVIDENCE_INTERSTAGE, &slope, &limit, &spread, &basis);
    ck_assert_double_lt(slope, -0.5);
  }
  for (size_t i = 0; i < 2; i++) {
    freeair_likelihood_reading(up[i], FREEAIR_EVIDENCE_INTERSTAGE, &slope, &limit, &spread, &basis);
    ck_assert_double_gt(slope, 0.5);
  }
  for (size_t i = 0; i < 5; i++) {
    freeair_likelihood_reading(unmoved[i], FREEAIR_EVIDENCE_INTERSTAGE, &slope, &limit, &spread, &basis);
    ck_assert_double_le(fabs(slope), 0.1);
  }
}
END_TEST

START_TEST(density_integrates_to_one)
{
  double sum = 0.0;
  const double step = 1.0 / 64.0;
  for (int i = -64 * 200; i <= 64 * 200; i++) {
    double density;
    ck_assert_int_eq(freeair_likelihood_density(i * step, &density), FREEAIR_OK);
    sum += density * step;
  }
  ck_assert_double_eq_tol(sum, 1.0, 1e-10);
}
END_TEST

START_TEST(update_is_symmetric_and_neutral)
{
  for (double prior = 0.05; prior < 1.0; prior += 0.1)
    for (double hit = 0.05; hit < 1.0; hit += 0.1) {
      double p;
      double q;
      ck_assert_int_eq(freeair_likelihood_update(prior, hit, 0.3, FREEAIR_EVIDENCE_NOT_CHECKED, &p), FREEAIR_OK);
      ck_assert_double_eq_tol(p, prior, 1e-15);
      ck_assert_int_eq(freeair_likelihood_update(prior, hit, hit, FREEAIR_EVIDENCE_YES, &p), FREEAIR_OK);
      ck_assert_double_eq_tol(p, prior, 1e-15);
      /* no is yes to the opposite; the cause absent is the other cause */
      ck_assert_int_eq(freeair_likelihood_update(prior, hit, 0.3, FREEAIR_EVIDENCE_NO, &p), FREEAIR_OK);
      ck_assert_int_eq(freeair_likelihood_update(prior, 1.0 - hit, 0.7, FREEAIR_EVIDENCE_YES, &q), FREEAIR_OK);
      ck_assert_double_eq_tol(p, q, 1e-15);
      ck_assert_int_eq(freeair_likelihood_update(1.0 - prior, 0.3, hit, FREEAIR_EVIDENCE_NO, &q), FREEAIR_OK);
      ck_assert_double_eq_tol(p + q, 1.0, 1e-15);
      /* the mean over answers is the prior */
      double yes;
      ck_assert_int_eq(freeair_likelihood_update(prior, hit, 0.3, FREEAIR_EVIDENCE_YES, &yes), FREEAIR_OK);
      const double often = prior * hit + (1.0 - prior) * 0.3;
      ck_assert_double_eq_tol(often * yes + (1.0 - often) * p, prior, 1e-15);
    }
}
END_TEST

START_TEST(information_is_bounded_and_zero_without_a_difference)
{
  double bits;
  for (double prior = 0.0; prior <= 1.0; prior += 0.125)
    for (double hit = 0.0; hit <= 1.0; hit += 0.125)
      for (double false_alarm = 0.0; false_alarm <= 1.0; false_alarm += 0.125) {
        ck_assert_int_eq(freeair_likelihood_information(prior, hit, false_alarm, &bits), FREEAIR_OK);
        const double rest = 1.0 - prior;
        const double entropy = prior > 0.0 && rest > 0.0 ? -prior * log2(prior) - rest * log2(rest) : 0.0;
        ck_assert(bits >= 0.0 && bits <= entropy + 1e-15);
        if (hit == false_alarm) ck_assert_double_eq(bits, 0.0);
      }
  ck_assert_int_eq(freeair_likelihood_information(0.5, 1.0, 0.0, &bits), FREEAIR_OK);
  ck_assert_double_eq_tol(bits, 1.0, 1e-15);
}
END_TEST

/* A reading equal to its expected value deviates by nothing, in every scale. */
START_TEST(deviation_of_the_expected_is_nothing)
{
  for (int32_t r = 1; r < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_READING); r++) {
    double deviation;
    double spread;
    const int32_t status = freeair_likelihood_deviation(r, 0.7, NAN, 0.7, NAN, 3.0, &deviation, &spread);
    if (r == FREEAIR_EVIDENCE_LEVEL_OFF) {
      ck_assert_int_eq(status, FREEAIR_ERR_UNSUPPORTED);
      continue;
    }
    ck_assert_int_eq(status, FREEAIR_OK);
    ck_assert_double_eq(deviation, 0.0);
    ck_assert_double_gt(spread, 0.0);
    double certain;
    ck_assert_int_eq(freeair_likelihood_deviation(r, 0.7, 0.0, 0.7, 0.0, 3.0, &deviation, &certain), FREEAIR_OK);
    ck_assert(certain > 0.0 && certain < spread);
  }
}
END_TEST

/* Every fault's repair carries cautions. */
START_TEST(repairs_carry_their_cautions)
{
  for (int32_t c = FREEAIR_EVIDENCE_INTAKE_FILTER; c < n_causes(); c++)
    ck_assert_uint_ne(freeair_likelihood_cautions(c), 0);
  ck_assert_uint_eq(freeair_likelihood_cautions(0), 0);
  ck_assert_uint_eq(freeair_likelihood_cautions(999), 0);
}
END_TEST

int main(void)
{
  TCase *numbers = tcase_create("numbers");
  tcase_add_test(numbers, priors_make_one);
  tcase_add_test(numbers, rates_are_probabilities);
  tcase_add_test(numbers, signatures_are_sane);
  tcase_add_test(numbers, interstage_separates_the_stages);
  tcase_add_test(numbers, density_integrates_to_one);
  tcase_add_test(numbers, update_is_symmetric_and_neutral);
  tcase_add_test(numbers, information_is_bounded_and_zero_without_a_difference);
  tcase_add_test(numbers, deviation_of_the_expected_is_nothing);
  tcase_add_test(numbers, repairs_carry_their_cautions);
  return run_case("likelihood", numbers);
}
