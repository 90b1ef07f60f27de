/* SPDX-License-Identifier: MIT */
/* Written from lib/version.h.in by make regen; the numbers are those of configure.ac. */
#ifndef FREEAIR_VERSION_H
#define FREEAIR_VERSION_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup version Version
 * Which release a program was compiled against (the macros), and which one it
 * runs with (the functions). Within one SONAME a library that is newer than the
 * header serves every program; one that is older may lack functions.
 * @{
 */

/** Major version of the header. */
#define FREEAIR_VERSION_MAJOR 0
/** Minor version of the header. */
#define FREEAIR_VERSION_MINOR 1
/** Patch level of the header. */
#define FREEAIR_VERSION_PATCH 0

/** The header's version as one number that grows: 10000 major + 100 minor + patch. */
#define FREEAIR_VERSION_NUMBER (FREEAIR_VERSION_MAJOR * 10000 + FREEAIR_VERSION_MINOR * 100 + FREEAIR_VERSION_PATCH)

/** The running library's version as one number, made like FREEAIR_VERSION_NUMBER.
 *
 * Model: 10000 major + 100 minor + patch.
 *
 * @return The number; compare it with FREEAIR_VERSION_NUMBER to find a library older than the header.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API uint32_t freeair_version_number(void);

/** The running library's version as text, such as "0.1.0".
 *
 * Model: constant.
 *
 * @return Static string, never null.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API const char *freeair_version_text(void);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
