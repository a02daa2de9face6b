// Runs a target over stored inputs: files, or all files of folders. No fuzzer is needed, so that every build can do it.

#include "input.hpp"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

namespace {

int replayed = 0;

void replay(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  const std::vector<char> bytes{std::istreambuf_iterator<char>(file), {}};
  // Every beginning of a short input is an input too.
  const std::size_t shortest = bytes.size() > 512 ? bytes.size() : 0;
  for (std::size_t size = shortest; size <= bytes.size(); ++size) {
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), size);
    ++replayed;
  }
}

} // namespace

int main(int argc, char** argv) {
  for (int i = 1; i < argc; ++i) {
    if (!std::filesystem::is_directory(argv[i])) {
      replay(argv[i]);
      continue;
    }
    for (const auto& entry : std::filesystem::directory_iterator(argv[i])) replay(entry.path());
  }
  std::printf("%d inputs\n", replayed);
  return replayed > 0 ? 0 : 1;
}
