// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <functional>
#include <stop_token>

namespace howlmap {

/// What long work is given: asked often whether to stop, told now and then how far it is. May be called from any
/// thread.
struct Job {
    std::stop_token stop;
    std::function<void(double fraction)> progress;  ///< 0..1, may be empty

    bool cancelled() const { return stop.stop_requested(); }
    void report(double fraction) const {
        if (progress) progress(fraction);
    }
};

}  // namespace howlmap
