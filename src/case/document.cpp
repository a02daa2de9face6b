#include "case/document.hpp"

#include "case/form_problem.hpp"

#include <algorithm>
#include <charconv>
#include <set>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {
namespace {

/// Follows the parser and notes every key that stands twice in one object.
class RepeatedKeys {
public:
  explicit RepeatedKeys(std::vector<CaseProblem>& problems) : problems_(problems) {}

  bool operator()(int depth, Json::parse_event_t event, Json& parsed) {
    if (depth > deepest_document) too_deep_ = true;
    if (event == Json::parse_event_t::object_start) objects_.emplace_back();
    if (event == Json::parse_event_t::object_end) objects_.pop_back();
    if (event == Json::parse_event_t::key && !objects_.empty()) note_key(parsed.get_ref<const std::string&>());
    return !too_deep_;
  }

  bool too_deep() const { return too_deep_; }

private:
  struct Object {
    std::set<std::string> keys;
    std::string current;
  };

  void note_key(const std::string& key) {
    objects_.back().current = key;
    if (objects_.back().keys.insert(key).second) return;
    std::string path;
    for (const Object& object : objects_) path += (path.empty() ? "" : ".") + object.current;
    problems_.push_back({path, "stands twice in one object", "each key once"});
  }

  std::vector<CaseProblem>& problems_;
  std::vector<Object> objects_;
  bool too_deep_ = false;
};

/// The text at a path such as tractor.pto.gears[1].pto_speed; null where there is none.
const Json* text_at(const Json& document, std::string_view path) {
  const Json* at = &document;
  while (!path.empty()) {
    const std::size_t end = std::min(path.find_first_of(".["), path.size());
    const std::string key(path.substr(0, end));
    if (!key.empty()) {
      if (!at->is_object() || !at->contains(key)) return nullptr;
      at = &(*at)[key];
    }
    path.remove_prefix(end);
    if (path.empty()) break;
    const bool in_list = path.front() == '[';
    path.remove_prefix(1);
    if (!in_list) continue;
    std::size_t index = 0;
    const auto [rest, error] = std::from_chars(path.data(), path.data() + path.size(), index);
    if (error != std::errc{} || !at->is_array() || index >= at->size()) return nullptr;
    at = &(*at)[index];
    path.remove_prefix(std::min(static_cast<std::size_t>(rest - path.data()) + 1, path.size()));
  }
  return at->is_string() ? at : nullptr;
}

bool is_amount(std::string_view text) {
  return !text.empty() && (text.front() == '-' || (text.front() >= '0' && text.front() <= '9'));
}

/// Every "path (amount)" of a sentence with the amount as the document has it.
std::string with_amounts_as_written(const Json& document, const std::string& sentence) {
  std::string out;
  std::size_t done = 0;
  for (std::size_t open = sentence.find(" ("); open != std::string::npos; open = sentence.find(" (", open + 2)) {
    const std::size_t close = sentence.find(')', open);
    if (close == std::string::npos) break;
    const std::size_t start = sentence.rfind(' ', open - 1) + 1; // of the whole where there is no space before
    const Json* entry = text_at(document, std::string_view(sentence).substr(start, open - start));
    if (entry == nullptr || !is_amount(std::string_view(sentence).substr(open + 2))) continue;
    out += sentence.substr(done, open + 2 - done) + shown(*entry);
    done = close;
  }
  return out + sentence.substr(done);
}

} // namespace

void quote_as_written(const Json& document, std::vector<CaseProblem>& problems, std::size_t first) {
  for (std::size_t i = first; i < problems.size(); ++i) {
    CaseProblem& problem = problems[i];
    const Json* entry = text_at(document, problem.path);
    if (entry != nullptr && is_amount(problem.value)) problem.value = shown(*entry);
    problem.expected = with_amounts_as_written(document, problem.expected);
  }
}

std::optional<Json> parse_document(std::string_view text, const DocumentKind& kind,
                                   std::vector<CaseProblem>& problems) {
  const std::string name = kind.name;
  if (text.size() > kind.largest_megabytes << 20U) {
    problems.push_back({"", std::to_string(text.size()) + " bytes",
                        "a " + name + " document of at most " + std::to_string(kind.largest_megabytes) + " MiB"});
    return std::nullopt;
  }
  RepeatedKeys repeated(problems);
  try {
    Json value = Json::parse(text.begin(), text.end(), std::ref(repeated));
    if (value.is_object() && !repeated.too_deep()) return value;
    if (repeated.too_deep()) {
      problems.push_back({"", "more than 32 levels of objects and lists", "a " + name + " document"});
      return std::nullopt;
    }
    problems.push_back({"", shown(value), std::string("a JSON object with ") + kind.holds});
  } catch (const Json::parse_error& error) {
    problems.push_back({"", form_problem(text, error.byte), "a " + name + " document in JSON"});
  }
  return std::nullopt;
}

namespace {

/// The number after the last stroke of a version such as "fieldshaft-case/1"; nothing if it is none of the same kind.
std::optional<int> same_kind(const Json& entry, const std::string& version) {
  if (!entry.is_string()) return std::nullopt;
  const std::string text = entry.get<std::string>();
  const std::size_t stroke = version.rfind('/') + 1;
  constexpr std::size_t most_digits = 6; // fits an int
  const std::string digits = text.compare(0, stroke, version, 0, stroke) == 0 ? text.substr(stroke) : "";
  const bool number =
      !digits.empty() && digits.size() <= most_digits && digits.find_first_not_of("0123456789") == std::string::npos;
  if (!number) return std::nullopt;
  return std::stoi(digits);
}

/// What to do about a version that is not the one that is read.
std::string version_advice(const Json& entry, const std::string& version) {
  const auto found = same_kind(entry, version);
  const auto wanted = same_kind(Json(version), version);
  if (!found || *found == *wanted) return "";
  if (*found > *wanted) return "; the document is newer: a newer version of this library reads it";
  return "; the document is older: the changelog says how to bring it up to date";
}

} // namespace

bool has_version(const Json& document, const char* version, std::vector<CaseProblem>& problems) {
  const auto entry = document.find("schema");
  const std::string expected = "\"" + std::string(version) + "\", the version that this library reads";
  if (entry == document.end()) {
    problems.push_back({"schema", "missing", expected});
    return false;
  }
  if (*entry == version) return true;
  problems.push_back({"schema", shown(*entry), expected + version_advice(*entry, version)});
  return false;
}

std::string shown(const Json& value) {
  if (value.is_object()) return "an object";
  if (value.is_array()) return "a list";
  std::string text = value.dump(-1, ' ', false, Json::error_handler_t::replace);
  constexpr std::size_t longest = 80;
  if (text.size() > longest) text = text.substr(0, longest) + "...";
  return text;
}

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
