// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QStringList>

class QMenu;

namespace howlmap::app {

/// The ten shows opened last, newest first; those that are gone stay listed, marked and disabled.
class RecentFiles : public QObject {
    Q_OBJECT
  public:
    using QObject::QObject;
    void add(const QString& path);
    void clear();
    QStringList paths() const;
    /// Fills a menu each time it is about to be shown.
    void fill(QMenu* menu);

  Q_SIGNALS:
    void chosen(const QString& path);
};

}  // namespace howlmap::app
