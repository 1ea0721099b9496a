// SPDX-License-Identifier: GPL-3.0-or-later
// What is selected: ids of objects on the plan (or rows of a table), in the order in which they were picked.
#pragma once
#include <QObject>
#include <QStringList>

namespace howlmap::app {

class Selection : public QObject {
    Q_OBJECT
  public:
    using QObject::QObject;
    const QStringList& ids() const { return ids_; }
    bool contains(const QString& id) const { return ids_.contains(id); }
    void set(const QStringList& ids);
    void toggle(const QString& id);
    void clear() { set({}); }

  Q_SIGNALS:
    void changed();

  private:
    QStringList ids_;
};

}  // namespace howlmap::app
