// SPDX-License-Identifier: GPL-3.0-or-later
// Lays out JSON so that a diff of two shows reads well. Private to core/file.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace howlmap::file {

enum class Layout {
    lines,    ///< a line for each member or item
    one_line  ///< all on one line, whatever lies inside too
};

class JsonWriter {
  public:
    void open(char bracket, Layout layout);
    void close(char bracket);
    /// Starts a member of the open object.
    void key(std::string_view key);
    /// A value as JSON text: an item of the open list, or the value of the key just written.
    void raw(std::string_view json);
    void text(std::string_view value);
    /// std::domain_error, naming the place, unless the number is finite.
    void number(double value);

    /// The whole text; everything must be closed.
    std::string take() { return std::move(out_); }

  private:
    struct Level {
        Layout layout;
        bool empty = true;
        std::size_t index = 0;
        std::string key;
    };
    void begin_value();
    void separate();
    std::string pointer() const;

    std::string out_;
    std::vector<Level> levels_;
    bool after_key_ = false;
};

}  // namespace howlmap::file
