#pragma once
// Version, compiler checks and the only compiler-specific constructs of the library.

#if defined(_MSVC_LANG)
#if _MSVC_LANG < 201703L
#error "fieldshaft needs C++17 or later (/std:c++17)"
#endif
#elif __cplusplus < 201703L
#error "fieldshaft needs C++17 or later (-std=c++17)"
#endif

#define FIELDSHAFT_VERSION_MAJOR 0
#define FIELDSHAFT_VERSION_MINOR 1
#define FIELDSHAFT_VERSION_PATCH 0
#define FIELDSHAFT_VERSION_STRING "0.1.0"

// Kept out of line and away from the hot path: the code that reports a bad input.
#if defined(__GNUC__)
#define FIELDSHAFT_COLD __attribute__((noinline, cold))
#elif defined(_MSC_VER)
#define FIELDSHAFT_COLD __declspec(noinline)
#else
#define FIELDSHAFT_COLD
#endif

#if defined(__cpp_exceptions) || defined(_CPPUNWIND)
#define FIELDSHAFT_HAS_EXCEPTIONS 1
#else
#define FIELDSHAFT_HAS_EXCEPTIONS 0
#endif

// A bit copy that may run at compile time (std::bit_cast is C++20; every supported compiler has this one).
#define FIELDSHAFT_BIT_CAST(type, value) __builtin_bit_cast(type, value)

// Whether the processor that runs this has a set of instructions, such as "avx2" (x86-64).
#define FIELDSHAFT_CPU_SUPPORTS(name) (__builtin_cpu_supports(name) != 0)
