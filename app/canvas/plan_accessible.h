// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace howlmap::app {

/// Lets assistive technology list the objects of every plan: name, kind, place and which way they look. May be called
/// more than once.
void install_plan_accessibility();

}  // namespace howlmap::app
