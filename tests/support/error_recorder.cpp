// A library that is loaded before a test program (LD_PRELOAD) and writes down the message of every InputError and
// CaseError that it throws, one a line: what the table of errors in the handbook is made of.

#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <exception>
#include <string>
#include <typeinfo>

#include <dlfcn.h>

namespace {

void record(std::string message) {
  message += '\n';
  if (std::FILE* log = std::fopen(FIELDSHAFT_ERROR_LOG, "a")) { // to append: lines of several programs do not mix
    std::fwrite(message.data(), 1, message.size(), log);
    std::fclose(log);
  }
}

std::string in_one_line(std::string text) {
  for (char& letter : text) letter = letter == '\n' ? ' ' : letter;
  return text;
}

} // namespace

extern "C" [[noreturn]] void __cxa_throw(void* thrown, std::type_info* type, void (*destroy)(void*)) {
  // Both derive from std::exception alone, through classes without further bases: the address is the same.
  if (std::strstr(type->name(), "10InputErrorE") != nullptr)
    record(in_one_line(static_cast<std::exception*>(thrown)->what()));
  if (std::strstr(type->name(), "9CaseErrorE") != nullptr) record(static_cast<std::exception*>(thrown)->what());
  using Throw = void (*)(void*, std::type_info*, void (*)(void*));
  static const auto next = reinterpret_cast<Throw>(dlsym(RTLD_NEXT, "__cxa_throw"));
  next(thrown, type, destroy);
  std::abort();
}
