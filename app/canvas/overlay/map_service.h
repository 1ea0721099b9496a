// SPDX-License-Identifier: GPL-3.0-or-later
// The map that is wanted, kept up to date off the interface thread: coarse first, then fine; the last one stays until a
// better one is there.
#pragma once
#include <QObject>
#include <chrono>
#include <memory>
#include <optional>

#include "app/document/document.h"
#include "app/document/worker.h"
#include "app/export/map_picture.h"
#include "core/maps/maps.h"

namespace howlmap::app {

class MapService : public QObject {
    Q_OBJECT
  public:
    /// For so long the hand has been still when it seems to rest.
    static constexpr std::chrono::milliseconds kHandRests{60};
    explicit MapService(Document& document, QObject* parent = nullptr, std::chrono::milliseconds rest = kHandRests);
    ~MapService() override;

    /// The map to keep up to date; none: no map and no work.
    void want(const std::optional<MapRequest>& request);
    /// Page or chalk: pictures are made again for it.
    void set_ink(const Ink& ink);
    /// Last picture of the wanted map, null before the first.
    std::shared_ptr<const MapPicture> picture() const { return picture_; }
    /// Why there is none: one sentence, empty when nothing is wrong.
    const QString& trouble() const { return trouble_; }
    /// Whether the picture is the fine one of the show as it is now.
    bool settled() const { return settled_revision_ == document_.revision() && !worker_.busy(); }

  Q_SIGNALS:
    void updated();

  private:
    struct Run;
    void start();
    void forget();
    void show_picture(quint64 order, std::shared_ptr<const MapPicture> picture);
    void finish(quint64 order, std::optional<quint64> revision, const QString& trouble);

    Document& document_;
    std::chrono::milliseconds rest_;
    std::optional<MapRequest> request_;
    Ink ink_;
    std::shared_ptr<const MapPicture> picture_;
    QString trouble_;
    quint64 order_ = 0;  ///< counts what was wanted; results of an older order are dropped
    quint64 settled_revision_ = ~0ULL;
    std::shared_ptr<MapEngine> engine_;  ///< used by one piece of work at a time
    std::shared_ptr<Run> run_;           ///< the newest piece of work
    Worker worker_;
};

}  // namespace howlmap::app
