/* SPDX-License-Identifier: MIT */
#include <freeair/freeair.h>
#include <stdio.h>

int main(void)
{
  freeair_pumpup_test test = FREEAIR_PUMPUP_TEST_INIT;
  freeair_pumpup_result air = FREEAIR_PUMPUP_RESULT_INIT;
  test.v_receiver_m3 = 0.300, test.p_ambient_pa = 100e3, test.t_ambient_k = 300.0, test.start = FREEAIR_PUMPUP_SOAKED;
  test.p_start_pa = 100e3, test.p_end_pa = 1100e3, test.duration_s = 340.0; /* 0 to 10 bar gauge in 5:40 */
  if (freeair_pumpup_analyse(&test, &air) < 0) return 1;
  printf("%.0f L/min of free air, standard uncertainty %.0f L/min\n", 6e4 * air.delivery_m3_s,
         6e4 * air.delivery_uncertainty_m3_s);
}
