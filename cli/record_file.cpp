// SPDX-License-Identifier: MIT
#include "record_file.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <filesystem>
#include <optional>
#include <string_view>
#include <system_error>
#include <thread>
#include <unordered_set>
#include <utility>
#include <variant>

#include "jarproof/detail/words.hpp"
#include "jarproof/format/json.hpp"
#include "jarproof/json.hpp"
#include "jarproof/shelf.hpp"
#include "options.hpp"

namespace jarproof::cli {
namespace {

[[nodiscard]] std::string system_words(int error) { return std::generic_category().message(error); }

/// An open file of its own, closed (and so unlocked) at the end.
class open_file {
 public:
  explicit open_file(int handle) : handle_(handle) {}
  open_file(open_file&& other) noexcept : handle_(std::exchange(other.handle_, -1)) {}
  open_file(const open_file&) = delete;
  open_file& operator=(const open_file&) = delete;
  open_file& operator=(open_file&&) = delete;
  ~open_file() {
    if (handle_ >= 0) ::close(handle_);
  }
  [[nodiscard]] int handle() const noexcept { return handle_; }

 private:
  int handle_;
};

/// Why the file cannot be a record, seen from outside; empty where nothing speaks against it.
[[nodiscard]] std::string objection(const std::string& file) {
  struct stat info {};
  if (::lstat(file.c_str(), &info) != 0) {
    const std::string folder = std::filesystem::path(file).parent_path().string();
    std::error_code ec;
    if (errno == ENOENT && !folder.empty() && !std::filesystem::is_directory(folder, ec))
      return "there is no folder " + folder + "; make it first";
    return errno == ENOENT ? "" : system_words(errno);
  }
  if (S_ISLNK(info.st_mode)) return "it is a symbolic link; name the file that it leads to";
  if (S_ISDIR(info.st_mode)) return "it is a folder; name a file in it, such as shelf.jsonl";
  if (!S_ISREG(info.st_mode)) return "it is no plain file; name one, such as shelf.jsonl";
  // Also for a user whom the system would let write all the same.
  if ((info.st_mode & (S_IWUSR | S_IWGRP | S_IWOTH)) == 0)
    return "it is write-protected; take that off, or name another file";
  return "";
}

struct locked_file {
  open_file file;
  bool is_new = false;  ///< made by us and still empty: it is taken away again if nothing is added
};

/// Waits until no other program has the file locked; nothing, with a complaint, where it stays so.
[[nodiscard]] bool lock(const open_file& file, const std::string& name) {
  constexpr int most_tries = 600;  // half a minute
  for (int tries = 0; ::flock(file.handle(), LOCK_EX | LOCK_NB) != 0; ++tries) {
    if (errno != EWOULDBLOCK && errno != EINTR) {
      complain(name + " cannot be locked: " + system_words(errno));
      return false;
    }
    if (tries == most_tries) {
      complain(name + " is kept locked by another program; try again when that has ended");
      return false;
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
  }
  return true;
}

/// True where the name still leads to the open file: a program that saves a file anew puts another
/// one in its place.
[[nodiscard]] bool is_still(const open_file& file, const std::string& name) {
  struct stat opened {};
  struct stat named {};
  return ::fstat(file.handle(), &opened) == 0 && ::lstat(name.c_str(), &named) == 0 &&
         opened.st_dev == named.st_dev && opened.st_ino == named.st_ino;
}

[[nodiscard]] std::optional<locked_file> open_locked(const std::string& name) {
  constexpr int most_tries = 100;
  constexpr int how = O_RDWR | O_APPEND | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK;
  for (int tries = 0; tries < most_tries; ++tries) {
    if (const std::string why = objection(name); !why.empty()) {
      complain(name + " cannot take the record: " + why);
      return std::nullopt;
    }
    int handle = ::open(name.c_str(), how | O_CREAT | O_EXCL, 0666);
    const bool is_new = handle >= 0;
    if (!is_new && errno == EEXIST) handle = ::open(name.c_str(), how);
    if (handle < 0) {
      if (errno == ENOENT) continue;  // taken away between the two
      complain(name + " cannot take the record: " + system_words(errno));
      return std::nullopt;
    }
    open_file file(handle);
    if (!lock(file, name)) return std::nullopt;
    struct stat info {};
    if (is_still(file, name) && ::fstat(file.handle(), &info) == 0)
      return locked_file{std::move(file), is_new && info.st_size == 0};
  }
  complain(name + " is replaced again and again by another program");
  return std::nullopt;
}

[[nodiscard]] std::optional<std::string> text_of(const open_file& file) {
  std::string out;
  char part[1 << 16];
  while (true) {
    const ssize_t got = ::pread(file.handle(), part, sizeof part, static_cast<off_t>(out.size()));
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return std::nullopt;
    if (got == 0) return out;
    out.append(part, static_cast<std::size_t>(got));
  }
}

/// A line to be added.
struct new_lot {
  const std::string* line = nullptr;
  shelf_line read;
  std::string lot;
  std::string quoted;  ///< the name as it stands in a line
};

/// What the record has already about some lots.
struct present {
  shelf lots;
  std::unordered_set<std::string_view> lines;
  bool is_record = true;  ///< false where the first line is no JSON object: some other file
};

[[nodiscard]] present read_present(std::string_view text, const std::string& name,
                                   const std::vector<new_lot>& wanted) {
  present out;
  bool first = true;
  // Others wait meanwhile, so what speaks of other lots is passed over; with a backslash in it, a
  // name may be written in several ways.
  const auto concerns = [&](std::string_view line) {
    return line.find('\\') != std::string_view::npos ||
           std::any_of(wanted.begin(), wanted.end(), [&](const new_lot& w) {
             return line.find(w.quoted) != std::string_view::npos;
           });
  };
  for (int number = 1; !text.empty(); ++number) {
    const std::size_t end = text.find('\n');
    const std::string_view line = detail::trim(text.substr(0, end));
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    if (line.empty() || (!first && !concerns(line))) continue;
    const result<document> read = read_json_line(line, name + ":" + std::to_string(number));
    if (first) out.is_record = read && read->root.kind == node_kind::map;
    first = false;
    out.lines.insert(line);
    if (!read || !is_record(read->root)) continue;
    // A line that cannot be read is named by `check`; it keeps nothing from being recorded.
    if (const result<shelf_line> one = read_record(*read)) static_cast<void>(out.lots.add(*one));
  }
  return out;
}

/// Writes all of it, or takes back what was written.
[[nodiscard]] bool append(const locked_file& record, const std::string& name,
                          std::size_t size_before, std::string_view text) {
  std::signal(SIGXFSZ, SIG_IGN);  // a limit on the size of files is told like a full disk
  const int handle = record.file.handle();
  std::size_t written = 0;
  int error = 0;
  while (written < text.size() && error == 0) {
    const ssize_t now = ::write(handle, text.data() + written, text.size() - written);
    if (now >= 0) {
      written += static_cast<std::size_t>(now);
    } else if (errno != EINTR) {
      error = errno;
    }
  }
  if (error == 0 && ::fsync(handle) != 0) error = errno;
  if (error == 0) return true;
  struct stat info {};
  const bool only_ours =
      ::fstat(handle, &info) == 0 && info.st_size == static_cast<off_t>(size_before + written);
  const bool undone = only_ours && ::ftruncate(handle, static_cast<off_t>(size_before)) == 0;
  if (undone && record.is_new) ::unlink(name.c_str());
  complain(name + " cannot be written: " + system_words(error) +
           (undone ? "; it is as it was" : "; look at its last line"));
  return false;
}

/// A new file is there after a power cut only if its folder knows of it.
void sync_folder(const std::string& name) {
  const std::string folder = std::filesystem::path(name).parent_path().string();
  const int handle = ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_CLOEXEC);
  if (handle < 0) return;
  const open_file file(handle);
  static_cast<void>(::fsync(file.handle()));
}

}  // namespace

exit_code append_records(const std::string& name, const std::vector<std::string>& lines) {
  if (lines.empty()) return all_accepted;
  if (name.empty() || name == "-") {
    complain("--record takes the name of a file, such as shelf.jsonl");
    return not_done;
  }
  exit_code status = all_accepted;
  std::vector<new_lot> wanted;
  for (const std::string& line : lines) {
    const result<document> text = read_json_line(line, name);
    const result<shelf_line> read = text ? read_record(*text) : result<shelf_line>(text.errors());
    if (!read) {
      complain(read.errors());
      status = not_done;
      continue;
    }
    const std::string& lot = std::get<shelf_record>(*read).lot;
    detail::json_writer quoted;
    quoted.text(lot);
    wanted.push_back({&line, *read, lot, quoted.take()});
  }
  const std::optional<locked_file> record = open_locked(name);
  if (!record) return not_done;
  const std::optional<std::string> text = text_of(record->file);
  if (!text) {
    complain(name + " cannot be read");
    return not_done;
  }
  present there = read_present(*text, name, wanted);
  if (!there.is_record) {
    complain(name + " is no shelf record: its first line is no JSON object; name another file");
    return not_done;
  }
  std::string added;
  std::vector<std::string> said;
  for (const new_lot& w : wanted) {
    const auto& lot = std::get<shelf_record>(w.read);
    const std::optional<shelf_run>& run = lot.run;
    const std::optional<std::size_t> place = there.lots.place_of(w.lot);
    // The same plan once more says nothing new, also by a later edition or behind its run log.
    const bool nothing_new =
        place && !run && there.lots.lots()[*place].record.plan_text == lot.plan_text;
    if (nothing_new || !there.lines.insert(*w.line).second) {
      said.push_back("lot " + w.lot + " stands in " + name + " already");
    } else if (run && run->verdict != verdict::accepted && !place) {
      complain("the run log of lot " + w.lot + " is " + std::string(name_of(run->verdict)) +
               ", so the lot is not recorded in " + name);
      status = worse(status, code_of(run->verdict));
    } else if (const problems misfits = there.lots.add(w.read); !misfits.empty()) {
      complain(misfits);
      status = not_done;
    } else {
      added += *w.line + "\n";
      const bool good = !run || run->verdict == verdict::accepted;
      said.push_back("lot " + w.lot + " is recorded " +
                     (good ? "" : "as " + std::string(name_of(run->verdict)) + " ") + "in " + name +
                     (good ? "" : ": do not eat from it"));
    }
  }
  if (added.empty()) {
    if (record->is_new) ::unlink(name.c_str());
  } else {
    if (!text->empty() && text->back() != '\n') added.insert(0, 1, '\n');
    if (!append(*record, name, text->size(), added)) return not_done;
    if (record->is_new) sync_folder(name);
  }
  for (const std::string& line : said) complain(line);
  return status;
}

}  // namespace jarproof::cli
