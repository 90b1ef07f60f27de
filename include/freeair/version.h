/* SPDX-License-Identifier: MIT */
/* Written by bindings/generate from configure.ac; do not edit. */
#ifndef FREEAIR_VERSION_H
#define FREEAIR_VERSION_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup version Version
 * Which release a program was compiled against, and which it runs with.
 * @{
 */

/** Major number of the release these headers belong to. */
#define FREEAIR_VERSION_MAJOR 0
/** Minor number of the release these headers belong to. */
#define FREEAIR_VERSION_MINOR 1
/** Patch number of the release these headers belong to. */
#define FREEAIR_VERSION_PATCH 0
/** The three numbers as one, major x 10000 + minor x 100 + patch, for comparing. */
#define FREEAIR_VERSION_NUMBER 100

/** Release of the library that is running, as a number.
 *
 * Model: major x 10000 + minor x 100 + patch.
 *
 * @return The number; at least FREEAIR_VERSION_NUMBER when the library is new enough.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API uint32_t freeair_version_number(void);

/** Release of the library that is running, as text.
 *
 * Model: "major.minor.patch".
 *
 * @return Static string.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API const char *freeair_version_text(void);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
