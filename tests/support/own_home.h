// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QTemporaryDir>

namespace howlmap::test {

/// Settings and recovery copies of this process, and of those that it starts, alone: neither the user's nor those of
/// another run at the same time. They go when it does.
class OwnHome {
  public:
    OwnHome() {
        for (const char* name : {"XDG_CONFIG_HOME", "XDG_DATA_HOME"})
            qputenv(name, folder_.filePath(QLatin1String(name)).toLocal8Bit());
    }

  private:
    QTemporaryDir folder_;
};

}  // namespace howlmap::test
