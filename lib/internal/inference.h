/* SPDX-License-Identifier: MIT */
/* What the inference stands on. */
#ifndef FREEAIR_INTERNAL_INFERENCE_H
#define FREEAIR_INTERNAL_INFERENCE_H

#include <freeair/evidence_readings.h>
#include <freeair/fault.h>
#include <freeair/inference.h>
#include <freeair/likelihood.h>

#endif
