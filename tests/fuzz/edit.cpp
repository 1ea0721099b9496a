// SPDX-License-Identifier: GPL-3.0-or-later
// A show, a zero byte, then a script of edits, two bytes each. All taken back gives the bytes of the start, all done
// again those of the end, and what an edit leaves can be saved and opened.
#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/file/read.h"
#include "core/file/write.h"
#include "core/show/change.h"
#include "core/show/edits.h"

namespace {
using namespace howlmap;

Ids all_ids(const Show& show) {
    Ids ids;
    const auto take = [&](const auto& list) {
        for (const auto& item : list) ids.push_back(item.id);
    };
    take(show.loudspeakers), take(show.inputs), take(show.performers), take(show.backline), take(show.listeners);
    take(show.marks), take(show.stage.risers);
    return ids;
}

void edit(Show& show, std::uint8_t kind, std::uint8_t how) {
    Ids ids = all_ids(show);
    if (ids.size() > 1) {
        std::rotate(ids.begin(), ids.begin() + how % static_cast<int>(ids.size()), ids.end());
        ids.resize(1 + how % std::min<std::size_t>(ids.size(), 4));
    }
    const double amount = how - 128.0;
    switch (kind % 13) {
        case 0:
            return move_by(show, ids, {amount, 10.0 * amount});
        case 1:
            return turn_by(show, ids, amount, {1.0, amount});
        case 2:
            return turn_each_by(show, ids, amount);
        case 3:
            return face(show, ids, {amount, 0.0});
        case 4:
            return mirror(show, ids, amount / 16.0);
        case 5:
            return align(show, ids, static_cast<AlignTo>(how % 6));
        case 6:
            return spread(show, ids, static_cast<SpreadAlong>(how % 2));
        case 7:
            return set_locked(show, ids, how % 2);
        case 8:
            return remove_objects(show, ids);
        case 9:
            if (all_ids(show).size() < 60) duplicate(show, ids, {0.5, amount / 8.0});
            return;
        case 10:
            move_corner(show, {}, how % 8, {amount / 8.0, amount / 4.0});
            return;
        case 11:
            insert_corner(show, {}, how % 8, {amount / 8.0, amount / 4.0});
            return;
        default:
            remove_corner(show, {}, how % 8);
    }
}
}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::uint8_t* const zero = std::find(data, data + size, 0);
    const auto read = read_show({reinterpret_cast<const char*>(data), static_cast<std::size_t>(zero - data)});
    if (!read || !within_limits(read->show)) return 0;
    Show show = read->show;
    const std::string start = write_show(show);
    std::vector<Change> stack;
    for (const std::uint8_t* at = zero + 1; at + 1 < data + size && stack.size() < 50; at += 2) {
        Show after = show;
        edit(after, at[0], at[1]);
        stack.push_back(difference(show, after, "step"));
        apply(show, stack.back());
        if (write_show(show) != write_show(after)) std::abort();
    }
    const std::string end = write_show(show);
    if (within_limits(show))
        if (const auto again = read_show(end); !again || write_show(again->show) != end) std::abort();
    for (auto step = stack.rbegin(); step != stack.rend(); ++step) apply(show, inverted(*step));
    if (write_show(show) != start) std::abort();
    for (const Change& step : stack) apply(show, step);
    if (write_show(show) != end) std::abort();
    return 0;
}
