/* SPDX-License-Identifier: MIT */
/* Answers that come as parallel arrays of codes and answers, in any order. */
#ifndef FREEAIR_INTERNAL_ANSWERS_H
#define FREEAIR_INTERNAL_ANSWERS_H

#include <freeair/status.h>

/* An answer is 0 for none, or 1 or 2. Fills answers[0 ... codes - 1] by code;
 * a code may come twice, but not with both answers. */
static inline int32_t freeair__answers_read(const int32_t *code, const int32_t *answer, size_t n, int32_t codes,
                                            int32_t *answers)
{
  for (int32_t c = 0; c < codes; c++) answers[c] = 0;
  if (n == 0) return FREEAIR_OK;
  if (code == NULL || answer == NULL) return FREEAIR_ERR_NULL;
  if (n > 1000u) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < n; i++) {
    if (code[i] < 1 || code[i] >= codes) return FREEAIR_ERR_NOT_FOUND;
    if (answer[i] < 0 || answer[i] > 2) return FREEAIR_ERR_DOMAIN;
    if (answer[i] == 0) continue;
    if (answers[code[i]] != 0 && answers[code[i]] != answer[i]) return FREEAIR_ERR_DOMAIN;
    answers[code[i]] = answer[i];
  }
  return FREEAIR_OK;
}

#endif
