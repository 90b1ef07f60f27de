/* SPDX-License-Identifier: MIT */
/** @file
 * Linkage of the public symbols. Define FREEAIR_STATIC when linking the static
 * library on a platform where imports are marked.
 */
#ifndef FREEAIR_EXPORT_H
#define FREEAIR_EXPORT_H

#include <stddef.h>
#include <stdint.h>

#if defined(FREEAIR_STATIC)
#define FREEAIR_API
#elif defined(_WIN32)
#ifdef FREEAIR_BUILD
#define FREEAIR_API __declspec(dllexport)
#else
#define FREEAIR_API __declspec(dllimport)
#endif
#elif defined(__GNUC__)
#define FREEAIR_API __attribute__((visibility("default")))
#else
#define FREEAIR_API
#endif

#endif
