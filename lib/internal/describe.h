/* SPDX-License-Identifier: MIT */
/* Shape of the tables that the generator writes and lib/describe.c reads. */
#ifndef FREEAIR_INTERNAL_DESCRIBE_H
#define FREEAIR_INTERNAL_DESCRIBE_H

#include <freeair/describe.h>

struct freeair_structure {
  const char *name;
  const freeair_parameter *fields;
  const void *initial; /* null for a structure that is not versioned */
  uint32_t size;
  uint32_t baseline;
  uint32_t n_fields;
};

struct freeair_function {
  const char *name;
  const char *topic;
  const char *brief;
  const char *model;
  const char *source;
  const freeair_parameter *parameters;
  const int32_t *statuses;
  void (*loop)(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors);
  uint32_t n_parameters;
  uint32_t n_statuses;
  uint32_t cautions;
};

typedef struct freeair__constant {
  const char *name;
  const char *enumeration;
  const char *brief;
  int32_t value;
} freeair__constant;

extern const freeair_function freeair__functions[];
extern const size_t freeair__n_functions;
extern const freeair_structure *const freeair__structures[];
extern const size_t freeair__n_structures;
extern const freeair__constant freeair__constants[];
extern const size_t freeair__n_constants;
/* positions in the tables above, in the order of the names */
extern const uint16_t freeair__functions_by_name[];
extern const uint16_t freeair__constants_by_name[];

#define FREEAIR__MAX_PARAMETERS 48
#define FREEAIR__MAX_STRUCTURE_BYTES 2048
#define FREEAIR__MAX_STRUCTURES 8

#endif
